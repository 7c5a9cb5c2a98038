package hornwright.desk.use;

import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.YearRow;
import hornwright.bench.archive.YearTable;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.YearRowsBroughtIn;
import hornwright.desk.csv.CsvTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Brings a table of serials and years in. First it is only tried: every fault is told with line, column and an example, and
 * nothing is written. Then all of it is one edit. The same table a second time adds nothing.
 */
public record ImportYears(Shop shop) {
    private static final List<String> COLUMNS = List.of("serial", "year", "source");
    private static final Map<String, String> ALSO = Map.of(
            "number",
            "serial",
            "serial number",
            "serial",
            "built",
            "year",
            "date",
            "year",
            "where",
            "source",
            "citation",
            "source");
    private static final Map<String, String> EXAMPLES =
            Map.of("serial", "41630", "year", "1938, 1938~ or 1937/1939", "source", "works day book, leaf 31");

    /**
     * What would come of it.
     *
     * @param rows new, or in the place of one of the same serial
     * @param known rows that are here already
     */
    public record Trial(List<YearRow> rows, int known, List<ImportEvidence.CellFault> faults) {
        public boolean isClean() {
            return faults.isEmpty();
        }
    }

    public Trial attempt(String text, String maker) {
        List<ImportEvidence.CellFault> faults = new ArrayList<>();
        CsvTable table;
        try {
            table = CsvTable.read(text);
        } catch (CsvTable.Broken broken) {
            faults.add(new ImportEvidence.CellFault(broken.line(), "the table", broken.what(), "serial,year,source"));
            return new Trial(List.of(), 0, faults);
        }
        Map<String, Integer> columns = columns(table.head());
        COLUMNS.stream()
                .filter(column -> !columns.containsKey(column))
                .forEach(column -> faults.add(new ImportEvidence.CellFault(
                        1, column, "no column is called so", "serial,year,source in the first line")));
        if (!faults.isEmpty()) {
            return new Trial(List.of(), 0, faults);
        }
        return rows(table, columns, maker, faults);
    }

    /** One edit; empty when all of it is here already or something is wrong with it. */
    public Optional<Saved> bringIn(Form form, String maker, Trial trial) {
        return !trial.isClean() || trial.rows().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        shop.save(StreamName.ARCHIVE, form, new YearRowsBroughtIn(maker, "a table", trial.rows())));
    }

    private Trial rows(
            CsvTable table, Map<String, Integer> columns, String maker, List<ImportEvidence.CellFault> faults) {
        List<YearRow> here = shop.archive().state().of(maker).years().rows();
        Map<Long, YearRow> all = new TreeMap<>();
        here.forEach(row -> all.put(row.serial(), row));
        List<YearRow> fresh = new ArrayList<>();
        Map<Long, Integer> lines = new TreeMap<>();
        int known = 0;
        for (CsvTable.Row cells : table.rows()) {
            YearRow row = row(cells, columns, faults);
            if (row == null) {
                continue;
            }
            Integer before = lines.putIfAbsent(row.serial(), cells.line());
            if (before != null) {
                faults.add(fault(cells, "serial", "%d stands in line %d too".formatted(row.serial(), before)));
            } else if (here.contains(row)) {
                known++;
            } else {
                fresh.add(row);
                all.put(row.serial(), row);
            }
        }
        if (faults.isEmpty()) {
            new YearTable(List.copyOf(all.values()))
                    .backwards()
                    .ifPresent(back -> faults.add(new ImportEvidence.CellFault(
                            lines.getOrDefault(
                                    back.higher().serial(),
                                    lines.getOrDefault(back.lower().serial(), 1)),
                            "year",
                            back.inWords() + "; one of the two is wrong",
                            "later years for higher serials")));
        }
        return new Trial(fresh, known, faults);
    }

    private static @Nullable YearRow row(
            CsvTable.Row cells, Map<String, Integer> columns, List<ImportEvidence.CellFault> faults) {
        int before = faults.size();
        String serial = cell(cells, columns, "serial").replace(" ", "");
        String year = cell(cells, columns, "year");
        String source = cell(cells, columns, "source");
        if (!serial.matches("\\d{1,9}")) {
            faults.add(fault(cells, "serial", "a serial is digits; this reads \"%s\"".formatted(serial)));
        }
        if (source.isEmpty() || source.length() > 200) {
            faults.add(fault(cells, "source", "a row says where its year is written down"));
        }
        @Nullable Edtf date = null;
        try {
            date = Edtf.parse(year);
            if (date.earliest() == null || date.latest() == null) {
                faults.add(fault(cells, "year", "a row needs both ends of its year"));
            }
        } catch (IllegalArgumentException wrong) {
            faults.add(fault(cells, "year", String.valueOf(wrong.getMessage())));
        }
        return faults.size() > before || date == null ? null : new YearRow(Long.parseLong(serial), date, source);
    }

    private static String cell(CsvTable.Row cells, Map<String, Integer> columns, String name) {
        return cells.cell(columns.getOrDefault(name, -1)).strip();
    }

    private static ImportEvidence.CellFault fault(CsvTable.Row cells, String column, String what) {
        return new ImportEvidence.CellFault(cells.line(), column, what, EXAMPLES.getOrDefault(column, ""));
    }

    private static Map<String, Integer> columns(List<String> head) {
        Map<String, Integer> columns = new TreeMap<>();
        for (int i = 0; i < head.size(); i++) {
            String plain = head.get(i).strip().toLowerCase(Locale.ROOT);
            String name = ALSO.getOrDefault(plain, plain);
            if (COLUMNS.contains(name)) {
                columns.putIfAbsent(name, i);
            }
        }
        return columns;
    }
}
