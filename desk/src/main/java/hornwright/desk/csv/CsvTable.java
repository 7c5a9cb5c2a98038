package hornwright.desk.csv;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table with its head. Rows keep the line they begin on, so that a fault can say where it is.
 *
 * @param separator what stood between the cells: a comma, a semicolon or a tab
 */
public record CsvTable(char separator, List<String> head, List<Row> rows) {
    private static final String SEPARATORS = ";\t,";
    /** What a spreadsheet takes for a formula, and the guard itself, so that taking it off again is exact. */
    private static final String FORMULA = "=+-@\t\r'";

    public CsvTable {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** One row; a cell beyond its end is empty. */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    /** A text that is no table: where, and what is wrong. */
    public static final class Broken extends RuntimeException {
        private final int line;

        Broken(int line, String what) {
            super(what);
            this.line = line;
        }

        public int line() {
            return line;
        }

        public String what() {
            return String.valueOf(getMessage());
        }
    }

    /** Reads the table; blank lines are passed over. */
    public static CsvTable read(String text) {
        String plain = text.startsWith("\ufeff") ? text.substring(1) : text;
        char separator = separatorOf(plain.lines().findFirst().orElse(""));
        List<Row> all = new CsvCells(plain, separator).rows();
        if (all.isEmpty()) {
            throw new Broken(1, "the table is empty; its first line names the columns");
        }
        return new CsvTable(
                separator, all.getFirst().cells().stream().map(String::strip).toList(), all.subList(1, all.size()));
    }

    /** The one that stands most often in the head. */
    private static char separatorOf(String head) {
        return (char) SEPARATORS
                .chars()
                .boxed()
                .max(Comparator.comparingLong(
                        c -> head.chars().filter(one -> one == c).count()))
                .orElse((int) ',')
                .intValue();
    }

    /** One line of a table, commas between. What a spreadsheet would run as a formula gets a single quote before it. */
    public static String line(Stream<String> cells) {
        return String.join(",", cells.map(CsvTable::written).toList()) + "\r\n";
    }

    private static String written(String text) {
        String safe = !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        boolean plain = safe.equals(safe.strip())
                && safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r' || c == '\t');
        return plain ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }

    /** Takes off the quote that {@link #line} put before a formula. */
    static String unguarded(String cell) {
        return cell.length() > 1 && cell.charAt(0) == '\'' && FORMULA.indexOf(cell.charAt(1)) >= 0
                ? cell.substring(1)
                : cell;
    }
}
