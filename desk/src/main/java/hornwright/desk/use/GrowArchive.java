package hornwright.desk.use;

import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.job.ConflictResolved;
import hornwright.bench.job.ObservationsMade;
import hornwright.bench.job.SearchLogged;
import hornwright.bench.job.StatementAdded;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.WitnessAdded;
import hornwright.desk.json.Faults;
import java.util.List;

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
        faults.refuseIfAny();
        return shop.save(StreamName.ARCHIVE, form, new ObservationsMade(observations));
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
