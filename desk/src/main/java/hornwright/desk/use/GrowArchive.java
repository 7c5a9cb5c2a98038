package hornwright.desk.use;

import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.archive.YearTable;
import hornwright.bench.job.ConflictResolved;
import hornwright.bench.job.Edit;
import hornwright.bench.job.FittingAdded;
import hornwright.bench.job.ObservationsMade;
import hornwright.bench.job.SearchLogged;
import hornwright.bench.job.StatementAdded;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.WitnessAdded;
import hornwright.bench.job.YearRowPut;
import hornwright.bench.job.YearRowTaken;
import hornwright.desk.json.Faults;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Adds to what is known of horns like these. */
public record GrowArchive(Shop shop) {
    public Saved witness(Form form, Witness witness) {
        return shop.save(StreamName.ARCHIVE, form, new WitnessAdded(witness));
    }

    public Saved observe(Form form, List<Observation> observations) {
        Faults faults = new Faults();
        for (int i = 0; i < observations.size(); i++) {
            if (!isWitness(observations.get(i).witness())) {
                faults.add(
                        "/observations/" + i + "/witness",
                        "\"" + observations.get(i).witness() + "\" is no witness of the archive",
                        "the id of a witness");
            }
        }
        observations.forEach(seen -> oneKind(seen.origin(), faults));
        faults.refuseIfAny();
        return shop.save(StreamName.ARCHIVE, form, new ObservationsMade(observations));
    }

    /** One thing said of several places: all are kept, or none. */
    public Saved state(Form form, String maker, List<Statement> statements) {
        Faults faults = new Faults();
        statements.forEach(said -> oneKind(said.evidence().origin(), faults));
        faults.refuseIfAny();
        return shop.save(
                StreamName.ARCHIVE,
                form,
                statements.stream().map(said -> new StatementAdded(maker, said)).toArray(Edit[]::new));
    }

    /** What fits where, or does not. */
    public Saved fit(Form form, String maker, Fitting fitting) {
        Faults faults = new Faults();
        oneKind(fitting.evidence().origin(), faults);
        faults.refuseIfAny();
        return shop.save(StreamName.ARCHIVE, form, new FittingAdded(maker, fitting));
    }

    /** One reason that sets several items aside. */
    public Saved resolve(Form form, String maker, List<Resolution> resolutions) {
        return shop.save(
                StreamName.ARCHIVE,
                form,
                resolutions.stream()
                        .map(aside -> new ConflictResolved(maker, aside))
                        .toArray(Edit[]::new));
    }

    /** One search for several places. */
    public Saved search(Form form, String maker, List<String> places, SearchLog search) {
        return shop.save(
                StreamName.ARCHIVE,
                form,
                places.stream()
                        .map(place -> new SearchLogged(maker, place, search))
                        .toArray(Edit[]::new));
    }

    /** A row of the table of years; one that would let the years run backwards is refused. */
    public Saved year(Form form, String maker, YearRow row) {
        List<YearRow> rows = new ArrayList<>(years(maker));
        rows.removeIf(one -> one.serial() == row.serial());
        rows.add(row);
        Faults faults = new Faults();
        new YearTable(rows)
                .backwards()
                .ifPresent(against -> faults.add(
                        "/row/year", against.inWords() + ". One of the two is wrong.", "\"year\": \"1937/1939\""));
        faults.refuseIfAny();
        return shop.save(StreamName.ARCHIVE, form, new YearRowPut(maker, row));
    }

    public Saved withoutYear(Form form, String maker, long serial) {
        if (years(maker).stream().noneMatch(row -> row.serial() == serial)) {
            Faults faults = new Faults();
            faults.add("/serial", "the table has no row of " + serial, "the serial of a row");
            faults.refuseIfAny();
        }
        return shop.save(StreamName.ARCHIVE, form, new YearRowTaken(maker, serial));
    }

    private List<YearRow> years(String maker) {
        return shop.archive().state().of(maker).years().rows();
    }

    /** The kind belongs to the origin: a copy cannot be of another kind than what it copies. */
    private void oneKind(Origin origin, Faults faults) {
        boolean other = shop.archive().state().byMaker().values().stream()
                .flatMap(archive -> Stream.of(
                                archive.observations().stream().map(Observation::origin),
                                archive.statements().stream()
                                        .map(said -> said.evidence().origin()),
                                archive.fittings().stream()
                                        .map(said -> said.evidence().origin()))
                        .flatMap(all -> all))
                .anyMatch(known -> known.id().equals(origin.id()) && known.kind() != origin.kind());
        if (other) {
            faults.add(
                    "/origin",
                    "\"" + origin.id() + "\" is of another kind elsewhere in the archive",
                    "a name of its own for each kind of evidence");
        }
    }

    public Saved state(Form form, String maker, Statement statement) {
        return shop.save(StreamName.ARCHIVE, form, new StatementAdded(maker, statement));
    }

    public Saved resolve(Form form, String maker, Resolution resolution) {
        return shop.save(StreamName.ARCHIVE, form, new ConflictResolved(maker, resolution));
    }

    public Saved search(Form form, String maker, String place, SearchLog search) {
        return shop.save(StreamName.ARCHIVE, form, new SearchLogged(maker, place, search));
    }

    private boolean isWitness(String id) {
        return shop.archive().state().byMaker().values().stream()
                .flatMap(archive -> archive.witnesses().stream())
                .anyMatch(witness -> witness.id().equals(id));
    }
}
