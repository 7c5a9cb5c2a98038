package hornwright.engines.action;

import hornwright.engines.action.Leg.State;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the cup of a key is, and when, from release until it rests: for drawing. Each point lies on the motion to about
 * 1e-8 of itself; straight lines between them stray by less than a thousandth of the travel.
 */
public record Trace(List<Point> points) {
    /** Seconds from release, and how far the cup centre has opened, m. */
    public record Point(double time, double opened) {}

    /** Points of one flight; a flight is an arc of a sine or a parabola. */
    private static final int PER_FLIGHT = 24;

    /** Traces longer than this are cut: the rest is too small to see. */
    private static final int MOST = 4000;

    public Trace {
        points = List.copyOf(points);
    }

    public static Trace of(ActionInput key) {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
        double cupPerStop = key.cupArm() / key.stopArm();
        KeyMotion.run(Slider.of(key), leg -> {
            if (points.size() < MOST) {
                add(points, leg, cupPerStop);
            }
        });
        return new Trace(points);
    }

    /** Near a standstill little way takes much time, so places crowd toward both ends. */
    private static void add(List<Point> points, Leg leg, double cupPerStop) {
        if (leg instanceof Leg.Flight) {
            for (int i = 1; i < PER_FLIGHT; i++) {
                double share = (1 - Math.cos(Math.PI * i / PER_FLIGHT)) / 2;
                double place = leg.from().place()
                        + share * (leg.to().place() - leg.from().place());
                points.add(new Point(leg.timeAt(place), place * cupPerStop));
            }
        }
        State end = leg.to();
        points.add(new Point(end.time(), end.place() * cupPerStop));
    }
}
