package hornwright.bench.feel;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Touch;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Press;
import java.util.ArrayList;
import java.util.List;

/** How far a touch goes down under how hard a finger: the linkage engine at rest under one force after another. */
public record TouchCurve(String key, List<Point> points) {
    /** Travel of the touch in mm, force on it in N. */
    public record Point(double travelMm, double newtons) {}

    private static final int POINTS = 120;
    private static final double BEYOND = 1.35;
    private static final double METRES = 1e-3;

    public TouchCurve {
        points = List.copyOf(points);
    }

    /** @param doneN the force at which its work is done; the curve goes a third beyond it; a key without a touch has none */
    public static TouchCurve of(Action action, Key key, double doneN) {
        Touch touch = key.touch();
        List<Point> points = new ArrayList<>();
        if (touch != null) {
            Balance balance = Balance.of(action.mechanism());
            int index = action.keywork()
                    .keys()
                    .list()
                    .indexOf(action.keywork().keys().get(key.id()));
            double rest = balance.atRest().rotation()[index];
            for (int i = 0; i <= POINTS; i++) {
                double newtons = BEYOND * doneN * i / POINTS;
                Press press = new Press(key.id(), newtons, METRES * touch.signedArmMm());
                double turned = Math.abs(balance.under(List.of(press)).rotation()[index] - rest);
                points.add(new Point(touch.armMm() * turned, newtons));
            }
        }
        return new TouchCurve(key.id(), points);
    }

    public double mostMm() {
        return points.stream().mapToDouble(Point::travelMm).max().orElse(0);
    }
}
