package hornwright.desk.web.view;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.desk.units.Shown;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A number as a page shows it: never without its unit, its uncertainty and the address of its because.
 *
 * @param uncertainty what stands behind the ±; empty for a choice
 * @param window "4.3 to 4.7" when one is claimed, or how far it may reach where its ± is larger than itself; else empty
 * @param at "at the front" for heights, else empty
 */
public record Figure(
        String label, String value, String unit, String uncertainty, String window, String at, String because) {
    private static final Set<String> SIGNED_UNITS = Set.of("cents", "dB", "°C", "%");
    private static final Set<NumberName> SIGNED = EnumSet.of(
            NumberName.CHANGE, NumberName.TURN, NumberName.OFF_THE_LINE, NumberName.PROUD, NumberName.PROJECTION);

    /** A number that cannot lie below zero, unless it does or its unit tells otherwise. */
    public static Figure of(String horn, String label, PlannedNumber number) {
        return of(horn, label, number, SIGNED_UNITS.contains(number.unit()));
    }

    /** A number that may lie below zero. */
    public static Figure signed(String horn, String label, PlannedNumber number) {
        return of(horn, label, number, true);
    }

    /** A number of a place under its own label. */
    public static Figure of(String horn, NumberName name, PlannedNumber number) {
        return of(horn, name.label(), number, SIGNED.contains(name));
    }

    private static Figure of(String horn, String label, PlannedNumber number, boolean mayBeNegative) {
        return new Figure(
                label,
                Written.value(number.value(), number.u()),
                number.unit(),
                Written.uncertainty(number.u()),
                window(number, mayBeNegative),
                number.at() == null ? "" : "at the " + number.at().word(),
                because(horn, number.because()));
    }

    public Figure withLabel(String other) {
        return new Figure(other, value, unit, uncertainty, window, at, because);
    }

    public Figure withValue(String written) {
        return new Figure(label, written, unit, uncertainty, window, at, because);
    }

    /** Where the because of that id is told. */
    public static String because(String horn, String id) {
        return "/horn/%s/because?of=%s".formatted(horn, encoded(id));
    }

    /** The same, reached through the becauses of {@code read}, so that it can lead back. */
    public static String because(String horn, String id, List<String> read) {
        StringBuilder address = new StringBuilder(because(horn, id));
        read.forEach(one -> address.append("&by=").append(encoded(one)));
        return address.toString();
    }

    private static String encoded(String id) {
        return URLEncoder.encode(id, StandardCharsets.UTF_8);
    }

    private static String window(PlannedNumber number, boolean mayBeNegative) {
        Double low = number.low();
        Double high = number.high();
        return low == null || high == null
                ? Shown.unsure(number.value(), number.u(), mayBeNegative).orElse("")
                : Shown.window(low, high);
    }
}
