package hornwright.desk.use;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.EvidenceBroughtIn;
import hornwright.bench.job.StreamName;
import hornwright.desk.csv.CsvTable;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Brings a table of looks into the archive. First it is only tried: every fault is told with line, column and an example,
 * and nothing is written. Then all of it is one edit. The same table a second time adds nothing.
 */
public record ImportEvidence(Shop shop) {
    /** One thing wrong: the line of the file, the column, what, and what would be right. */
    public record CellFault(int line, String column, String what, String example) {
        public String inWords() {
            return "line %d, %s: %s; right would be %s".formatted(line, column, what, example);
        }
    }

    /**
     * What would come of it.
     *
     * @param columns by which column of the table each thing is told; a thing no column tells is missing
     * @param rows how many there are
     * @param horns new ones
     * @param known looks that are here already
     */
    public record Trial(
            List<String> head,
            Map<EvidenceColumn, Integer> columns,
            int rows,
            List<Witness> horns,
            List<Observation> looks,
            int known,
            List<CellFault> faults,
            List<EvidenceBroughtIn.Brought> brought) {
        public boolean isClean() {
            return faults.isEmpty();
        }
    }

    /** @param maker whose horns they are when no column says it */
    public Trial attempt(String text, Map<EvidenceColumn, Integer> chosen, String maker) {
        CsvTable table;
        try {
            table = CsvTable.read(text);
        } catch (CsvTable.Broken broken) {
            return new Trial(
                    List.of(),
                    Map.of(),
                    0,
                    List.of(),
                    List.of(),
                    0,
                    List.of(new CellFault(broken.line(), "the table", broken.what(), "serial,voice,place,material")),
                    List.of());
        }
        Map<EvidenceColumn, Integer> columns = chosen.isEmpty() ? guessed(table.head()) : chosen;
        return new Reading(table, columns, maker).trial();
    }

    /** One edit; an empty answer when all of it is here already or something is wrong with it. */
    public Optional<Saved> bringIn(Form form, String from, Trial trial) {
        return !trial.isClean() || trial.brought().isEmpty()
                ? Optional.empty()
                : Optional.of(shop.save(StreamName.ARCHIVE, form, new EvidenceBroughtIn(from, trial.brought())));
    }

    private static Map<EvidenceColumn, Integer> guessed(List<String> head) {
        Map<EvidenceColumn, Integer> columns = new EnumMap<>(EvidenceColumn.class);
        for (EvidenceColumn column : EvidenceColumn.values()) {
            for (int i = 0; i < head.size(); i++) {
                if (column.isCalled(head.get(i)) && !columns.containsValue(i)) {
                    columns.putIfAbsent(column, i);
                }
            }
        }
        return columns;
    }

    /** One walk through the rows. */
    private final class Reading {
        private final CsvTable table;
        private final Map<EvidenceColumn, Integer> columns;
        private final String maker;
        private final List<CellFault> faults = new ArrayList<>();
        private final Map<String, Witness> horns = new LinkedHashMap<>();
        private final Map<String, Observation> looks = new LinkedHashMap<>();
        private final Map<String, String> makers = new LinkedHashMap<>();
        private final Map<String, Set<String>> ids = new HashMap<>();
        private int known;

        Reading(CsvTable table, Map<EvidenceColumn, Integer> columns, String maker) {
            this.table = table;
            this.columns = columns;
            this.maker = maker;
        }

        Trial trial() {
            EvidenceColumn.needed()
                    .filter(column -> !columns.containsKey(column))
                    .forEach(column -> faults.add(new CellFault(
                            1, column.word(), "no column tells " + column.meaning(), "a column " + column.word())));
            if (faults.isEmpty()) {
                table.rows().forEach(this::row);
            }
            return new Trial(
                    table.head(),
                    columns,
                    table.rows().size(),
                    List.copyOf(horns.values()),
                    List.copyOf(looks.values()),
                    known,
                    faults,
                    faults.isEmpty() ? brought() : List.of());
        }

        private void row(CsvTable.Row cells) {
            EvidenceRow row = new EvidenceRow(cells, columns);
            Witness told = row.witness(maker);
            Archive archive = shop.archive().state().of(told.maker());
            Witness witness = here(archive, told.voice(), told.serial()).orElse(told);
            Observation look = row.look(witness);
            requirePlace(row, archive, told, look.place());
            if (told.maker().isEmpty()) {
                row.fault(EvidenceColumn.MAKER, "nothing says whose horn this is");
            }
            Witness before = horns.get(told.maker() + "|" + witness.id());
            if (before != null && !before.equals(told)) {
                row.fault(EvidenceColumn.SERIAL, "horn %d is described otherwise further up".formatted(told.serial()));
            }
            faults.addAll(row.faults());
            if (!row.faults().isEmpty()) {
                return;
            }
            if (witness.equals(told) && !archive.witnesses().contains(told)) {
                horns.put(told.maker() + "|" + told.id(), told);
            }
            if (isHere(archive, look) || looks.putIfAbsent(look.id(), look) != null) {
                known++;
            }
            makers.putIfAbsent(look.id(), told.maker());
        }

        private boolean isHere(Archive archive, Observation look) {
            return ids.computeIfAbsent(
                            archive.maker(),
                            none -> archive.observations().stream()
                                    .map(Observation::id)
                                    .collect(Collectors.toSet()))
                    .contains(look.id());
        }

        /** A place some pattern of that voice has, or somebody has named before. */
        private void requirePlace(EvidenceRow row, Archive archive, Witness of, String place) {
            boolean there = place.isEmpty()
                    || KeyworkFile.SHIPPED.stream()
                            .map(Keyworks::named)
                            .filter(keywork -> keywork.voice() == of.voice())
                            .anyMatch(keywork -> keywork.places().contains(place))
                    || archive.observations().stream()
                            .anyMatch(seen -> seen.place().equals(place));
            if (!there) {
                row.fault(
                        EvidenceColumn.PLACE,
                        "no %s has a place \"%s\"".formatted(of.voice().word(), place));
            }
        }

        /** The horn of that number, however it is called in the archive. */
        private static Optional<Witness> here(Archive archive, Voice voice, long serial) {
            return archive.witnesses().stream()
                    .filter(one -> one.voice() == voice && one.serial() == serial)
                    .findFirst();
        }

        private List<EvidenceBroughtIn.Brought> brought() {
            Map<String, List<Observation>> byMaker = new LinkedHashMap<>();
            looks.values()
                    .forEach(look -> byMaker.computeIfAbsent(
                                    makers.getOrDefault(look.id(), maker), none -> new ArrayList<>())
                            .add(look));
            return byMaker.entrySet().stream()
                    .map(entry -> new EvidenceBroughtIn.Brought(
                            entry.getKey(),
                            horns.values().stream()
                                    .filter(horn -> horn.maker().equals(entry.getKey()))
                                    .toList(),
                            entry.getValue(),
                            List.of()))
                    .toList();
        }
    }
}
