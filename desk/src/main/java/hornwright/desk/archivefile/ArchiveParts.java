package hornwright.desk.archivefile;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.archive.YearRow;
import hornwright.bench.archive.YearTable;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Faults;
import hornwright.desk.json.Fields;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The parts of an archive file as read, before anybody knows whether they fit together. */
record ArchiveParts(
        String maker,
        List<Witness> witnesses,
        List<List<Observation>> looks,
        List<Statement> statements,
        List<Resolution> resolutions,
        Map<String, SearchLog> searches,
        List<YearRow> years,
        List<Fitting> fittings) {
    static final String FORMAT = "hornwright-archive";
    static final int VERSION = 1;

    static ArchiveParts read(Fields file) {
        if (!file.text("format", FORMAT).equals(FORMAT)) {
            file.fault("format", "this is not an archive file", "\"format\": \"" + FORMAT + "\"");
        }
        if (file.whole("version", Bound.COUNT, "1") > VERSION) {
            file.fault("version", "this file is from a newer program", "\"version\": " + VERSION);
        }
        file.textIfAny("note", "demo");
        String maker = file.text("maker", "Tarrant & Loe");
        List<Witness> witnesses = file.list("witnesses", fields -> WitnessJson.read(fields, maker));
        file.uniqueIds("witnesses", witnesses.stream().map(Witness::id).toList());
        return new ArchiveParts(
                maker,
                witnesses,
                file.list("observations", ObservationJson::read),
                file.list("statements", StatementJson::read),
                file.list("resolutions", StatementJson::resolution),
                searches(file),
                YearJson.list(file),
                file.list("fittings", FittingJson::read));
    }

    private static Map<String, SearchLog> searches(Fields file) {
        Map<String, SearchLog> searches = new LinkedHashMap<>();
        file.list("searches", SearchJson::read)
                .forEach(search -> search.places().forEach(place -> searches.put(place, search.log())));
        return searches;
    }

    /** References, ids that stand once, and origins that are of one kind. */
    void check(String pointer, Faults faults) {
        Set<String> known = new HashSet<>();
        witnesses.forEach(witness -> known.add(witness.id()));
        Set<String> ids = new HashSet<>();
        Map<String, Kind> origins = new HashMap<>();
        for (int i = 0; i < looks.size(); i++) {
            String at = pointer + "/observations/" + i;
            for (Observation look : looks.get(i)) {
                if (!known.contains(look.witness())) {
                    faults.add(
                            at + "/witness",
                            "no witness is called \"" + look.witness() + "\"",
                            known.isEmpty()
                                    ? "a witness of this file"
                                    : "\"" + witnesses.getFirst().id() + "\"");
                }
                once(ids, look.id(), at, faults);
                oneKind(origins, look.origin(), at, faults);
            }
        }
        for (int i = 0; i < statements.size(); i++) {
            Evidence said = statements.get(i).evidence();
            once(ids, said.id(), pointer + "/statements/" + i, faults);
            oneKind(origins, said.origin(), pointer + "/statements/" + i, faults);
        }
        for (int i = 0; i < fittings.size(); i++) {
            Evidence said = fittings.get(i).evidence();
            once(ids, said.id(), pointer + "/fittings/" + i, faults);
            oneKind(origins, said.origin(), pointer + "/fittings/" + i, faults);
        }
        for (int i = 0; i < resolutions.size(); i++) {
            if (!ids.contains(resolutions.get(i).evidence())) {
                faults.add(
                        pointer + "/resolutions/" + i + "/evidence",
                        "nothing here has the id \"" + resolutions.get(i).evidence() + "\"",
                        "the id of an observation or statement");
            }
        }
    }

    private static void once(Set<String> ids, String id, String at, Faults faults) {
        if (!ids.add(id)) {
            faults.add(at + "/id", "the id \"" + id + "\" stands twice", "\"" + id + "-2\"");
        }
    }

    private static void oneKind(Map<String, Kind> origins, Origin origin, String at, Faults faults) {
        Kind other = origins.putIfAbsent(origin.id(), origin.kind());
        if (other != null && other != origin.kind()) {
            faults.add(
                    at + "/origin",
                    "\"" + origin.id() + "\" is a " + other.word() + " elsewhere and a "
                            + origin.kind().word() + " here",
                    "an origin of its own for each kind");
        }
    }

    Archive assemble() {
        return new Archive(
                maker,
                witnesses,
                looks.stream().flatMap(List::stream).toList(),
                statements,
                resolutions,
                searches,
                new YearTable(years),
                fittings,
                List.of());
    }
}
