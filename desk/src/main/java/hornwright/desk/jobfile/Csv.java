package hornwright.desk.jobfile;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Comma-separated values (RFC 4180). A text that a spreadsheet would take for a formula gets an apostrophe in front;
 * numbers are left as they are.
 */
final class Csv {
    private final StringBuilder text = new StringBuilder();

    Csv(String... headings) {
        row((Object[]) headings);
    }

    /** One row; null is an empty cell. */
    void row(@Nullable Object... cells) {
        text.append(Arrays.stream(cells).map(Csv::cell).collect(Collectors.joining(",")))
                .append("\r\n");
    }

    /** Two decimals, or an empty cell. */
    static @Nullable Double hundredths(@Nullable Double value) {
        return value == null ? null : Math.round(value * 100) / 100.0;
    }

    private static String cell(@Nullable Object value) {
        return switch (value) {
            case null -> "";
            case Double number -> number.toString();
            case Integer number -> number.toString();
            default -> quoted(guarded(String.format(Locale.ROOT, "%s", value)));
        };
    }

    private static String guarded(String text) {
        return !text.isEmpty() && "=+-@\t\r\0".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private static String quoted(String text) {
        boolean special = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return special ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
