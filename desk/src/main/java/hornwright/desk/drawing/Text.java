package hornwright.desk.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers and words stand in markup. */
final class Text {
    private Text() {}

    /** A number with one decimal at most, the same everywhere in the world. */
    static String n(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    static String at(Spot spot) {
        return n(spot.x()) + " " + n(spot.y());
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
