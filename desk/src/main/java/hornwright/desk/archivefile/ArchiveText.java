package hornwright.desk.archivefile;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.SearchLog;
import hornwright.desk.json.Out;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes an archive one entry a line. */
final class ArchiveText {
    private ArchiveText() {}

    static String of(Archive archive) {
        List<String> members = new ArrayList<>();
        Out head = Out.object()
                .put("format", ArchiveParts.FORMAT)
                .put("version", ArchiveParts.VERSION)
                .put("maker", archive.maker());
        head.node().properties().forEach(field -> members.add(" \"" + field.getKey() + "\": " + field.getValue()));
        members.add(list(
                "witnesses",
                archive.witnesses().stream().map(WitnessJson::write).toList()));
        members.add(list(
                "observations",
                Alike.of(archive.observations()).stream()
                        .map(ObservationJson::write)
                        .toList()));
        members.add(list(
                "statements",
                archive.statements().stream().map(StatementJson::write).toList()));
        members.add(list(
                "resolutions",
                archive.resolutions().stream().map(StatementJson::write).toList()));
        members.add(list("searches", searches(archive.searches())));
        members.add(list(
                "years", archive.years().rows().stream().map(YearJson::write).toList()));
        if (!archive.fittings().isEmpty()) {
            members.add(list(
                    "fittings",
                    archive.fittings().stream().map(FittingJson::write).toList()));
        }
        return "{\n" + String.join(",\n", members) + "\n}\n";
    }

    private static List<Out> searches(Map<String, SearchLog> searches) {
        Map<SearchLog, List<String>> places = new LinkedHashMap<>();
        new TreeMap<>(searches)
                .forEach((place, log) ->
                        places.computeIfAbsent(log, none -> new ArrayList<>()).add(place));
        return places.entrySet().stream()
                .map(one -> SearchJson.write(one.getValue(), one.getKey()))
                .toList();
    }

    private static String list(String name, List<Out> all) {
        String lines = all.stream().map(one -> "  " + one).collect(Collectors.joining(",\n", "\n", "\n"));
        return " \"" + name + "\": [" + (all.isEmpty() ? "" : lines) + " ]";
    }
}
