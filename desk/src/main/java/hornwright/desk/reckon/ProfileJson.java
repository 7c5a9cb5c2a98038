package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Profile.Point;
import hornwright.engines.seat.Profile.Points;
import java.util.List;

/** A height round the rim: waves, or points joined by straight lines; one kind in one list. */
final class ProfileJson {
    private static final int FINEST = 360;

    private ProfileJson() {}

    private sealed interface Entry {
        record Wave(Harmonic harmonic) implements Entry {}

        record Spot(Point point) implements Entry {}
    }

    /** The profile at {@code profile_um}; an empty list is level. */
    static Profile read(Fields in) {
        List<Entry> entries = in.list("profile_um", ProfileJson::entry);
        List<Harmonic> waves = entries.stream()
                .filter(Entry.Wave.class::isInstance)
                .map(entry -> ((Entry.Wave) entry).harmonic())
                .toList();
        List<Point> points = entries.stream()
                .filter(Entry.Spot.class::isInstance)
                .map(entry -> ((Entry.Spot) entry).point())
                .toList();
        if (points.isEmpty()) {
            return new Harmonics(waves);
        }
        return acceptable(in, waves, points) ? new Points(points) : Profile.FLAT;
    }

    private static boolean acceptable(Fields in, List<Harmonic> waves, List<Point> points) {
        boolean good = true;
        if (!waves.isEmpty()) {
            in.fault("profile_um", "waves and points do not mix in one list", "waves only, or points only");
            good = false;
        }
        if (points.size() < Points.FEWEST) {
            in.fault(
                    "profile_um",
                    points.size() + " points do not describe a rim",
                    "at least " + Points.FEWEST + " points");
            good = false;
        }
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).angle() <= points.get(i - 1).angle()) {
                in.faultIn("profile_um", i, "angles must ascend", "more than the angle before it");
                good = false;
            }
        }
        return good && inOneTurn(points);
    }

    private static boolean inOneTurn(List<Point> points) {
        return points.getLast().angle() < 2 * Math.PI && points.getFirst().angle() >= 0;
    }

    private static Entry entry(Fields in) {
        return switch (in.oneOf("cos", "sin", "angle_deg")) {
            case "cos" -> new Entry.Wave(new Harmonic(order(in, "cos"), amplitude(in), 0));
            case "sin" -> new Entry.Wave(new Harmonic(order(in, "sin"), 0, amplitude(in)));
            default -> spot(in);
        };
    }

    private static int order(Fields in, String name) {
        int order = in.whole(name, Bound.WHOLE, "2");
        if (order < 0 || order > FINEST) {
            in.fault(name, order + " waves do not fit round a rim", "\"" + name + "\": 2");
            return 1;
        }
        return order;
    }

    private static double amplitude(Fields in) {
        return Unit.UM.si(in.number("amplitude", Bound.ANY, "50"));
    }

    private static Entry spot(Fields in) {
        double degrees = in.number("angle_deg", Bound.NOT_NEGATIVE, "45");
        if (degrees >= 360) {
            in.fault("angle_deg", degrees + " lies beyond one turn", "\"angle_deg\": 45");
        }
        double height = Unit.UM.si(in.number("height_um", Bound.ANY, "20"));
        return new Entry.Spot(new Point(Math.min(Unit.DEG.si(degrees), Math.nextDown(2 * Math.PI)), height));
    }
}
