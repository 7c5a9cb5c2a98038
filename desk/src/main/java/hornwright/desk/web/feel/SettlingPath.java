package hornwright.desk.web.feel;

import hornwright.engines.action.Trace;
import java.util.Locale;

/** The way of a cup let go as a line in a box 200 wide and 64 high, time to the right, open upwards. */
public final class SettlingPath {
    private static final double WIDTH = 200;
    private static final double SHUT = 58;
    private static final double OPEN = 12;
    /** Points nearer than this, in units of the box, are one. */
    private static final double NEAR = 0.6;

    private SettlingPath() {}

    public static String of(Trace trace, double seconds) {
        double most =
                trace.points().stream().mapToDouble(Trace.Point::opened).max().orElse(1);
        StringBuilder d = new StringBuilder("M0 58");
        double lastX = 0;
        double lastY = SHUT;
        for (Trace.Point point : trace.points()) {
            double x = Math.min(WIDTH, point.time() / seconds * WIDTH);
            double y = SHUT - point.opened() / most * (SHUT - OPEN);
            if (Math.hypot(x - lastX, y - lastY) >= NEAR) {
                d.append(String.format(Locale.ROOT, "L%.1f %.1f", x, y));
                lastX = x;
                lastY = y;
            }
        }
        return d.append(String.format(Locale.ROOT, "H%.0f", WIDTH)).toString();
    }
}
