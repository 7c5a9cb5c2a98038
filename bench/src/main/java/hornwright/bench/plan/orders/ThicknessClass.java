package hornwright.bench.plan.orders;

import hornwright.bench.plan.PlannedNumber;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How a pad thickness is written on an order: the stocked thickness once it is chosen, the window while nothing fits it, and
 * no more than a class until a trial pad has told. The classes are common practice.
 */
final class ThicknessClass {
    private ThicknessClass() {}

    static String words(@Nullable PlannedNumber chosen, PlannedNumber wanted) {
        if (chosen != null) {
            return String.format(Locale.ROOT, "%.1f", chosen.value());
        }
        if (wanted.hasWindow()) {
            return String.format(Locale.ROOT, "%.1f to %.1f", wanted.low(), wanted.high());
        }
        return of(wanted.value());
    }

    static String of(double thicknessMm) {
        if (thicknessMm < 3.0) {
            return "class small (under 3.0)";
        }
        if (thicknessMm < 3.9) {
            return "class thin (3.0 to 3.9)";
        }
        return thicknessMm < 4.4 ? "class medium (3.9 to 4.4)" : "class full (4.4 and over)";
    }
}
