package hornwright.desk.use;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A table for a spreadsheet, RFC 4180. A text that a spreadsheet would take for a formula gets a single quote before it;
 * numbers are left as they are.
 */
final class Table {
    private final List<String> lines = new ArrayList<>();

    static Table of(String... heads) {
        Table table = new Table();
        table.lines.add(String.join(",", heads));
        return table;
    }

    /** A row; {@code null} is an empty cell. */
    Table row(@Nullable Object... cells) {
        List<String> written = new ArrayList<>();
        for (Object cell : cells) {
            written.add(cell(cell));
        }
        lines.add(String.join(",", written));
        return this;
    }

    private static String cell(@Nullable Object value) {
        return switch (value) {
            case null -> "";
            case Number number -> number.toString();
            default -> quoted(value.toString());
        };
    }

    private static String quoted(String text) {
        String safe = !text.isEmpty() && "=+-@\t\r\0".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        boolean plain = safe.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
    }

    @Override
    public String toString() {
        return lines.stream().map(line -> line + "\r\n").collect(Collectors.joining());
    }
}
