package hornwright.desk.web.view;

import hornwright.bench.plan.PlannedNumber;
import hornwright.desk.units.Shown;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A number as a page shows it: never without its unit, its uncertainty and the address of its because.
 *
 * @param uncertainty what stands behind the ±; empty for a choice
 * @param window "4.3 to 4.7" when one is claimed, else empty
 * @param at "at the front" for heights, else empty
 */
public record Figure(
        String label, String value, String unit, String uncertainty, String window, String at, String because) {

    public static Figure of(String horn, String label, PlannedNumber number) {
        return new Figure(
                label,
                Written.value(number.value(), number.u()),
                number.unit(),
                Written.uncertainty(number.u()),
                window(number),
                number.at() == null ? "" : "at the " + number.at().word(),
                because(horn, number.because()));
    }

    Figure withValue(String written) {
        return new Figure(label, written, unit, uncertainty, window, at, because);
    }

    /** Where the because of that id is told. */
    public static String because(String horn, String id) {
        return "/horn/%s/because?of=%s".formatted(horn, encoded(id));
    }

    /** The same, reached through the becauses of {@code read}, so that it can lead back. */
    static String because(String horn, String id, List<String> read) {
        StringBuilder address = new StringBuilder(because(horn, id));
        read.forEach(one -> address.append("&by=").append(encoded(one)));
        return address.toString();
    }

    private static String encoded(String id) {
        return URLEncoder.encode(id, StandardCharsets.UTF_8);
    }

    private static String window(PlannedNumber number) {
        Double low = number.low();
        Double high = number.high();
        return low == null || high == null ? "" : Shown.window(low, high);
    }
}
