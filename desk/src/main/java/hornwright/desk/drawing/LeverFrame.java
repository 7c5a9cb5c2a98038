package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Direction;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Touch;
import java.util.Optional;

/**
 * A cut through tube and key where the cup stands, seen along the hinge: the hole looking up, the hinge at the left. Millimetres, the middle of the tube at the origin. A hinge across the tube is cut along the tube instead,
 * which is drawn as a very wide circle.
 */
final class LeverFrame {
    private static final double ALMOST_FLAT_MM = 4000;

    private final double radius;
    private final double hingeRadius;
    /** From straight up, negative to the left, in radians. The hole looks straight up. */
    private final double hingeAngle;

    private LeverFrame(double radius, double heightAbove, double between) {
        this.radius = radius;
        this.hingeRadius = radius + heightAbove;
        this.hingeAngle = -between;
    }

    static LeverFrame of(Keywork keywork, Key key) {
        Optional<Cup> cup = keywork.cupOf(key);
        double high = key.axis().heightAboveBodyMm();
        if (key.axis().direction() == Direction.ACROSS) {
            double reach = cup.map(found -> Math.abs(
                            keywork.holeOf(found).at().atMm() - key.axis().atMm()))
                    .orElse(key.stop().armMm());
            return new LeverFrame(ALMOST_FLAT_MM, high, reach / ALMOST_FLAT_MM);
        }
        double at = cup.map(found -> keywork.holeOf(found).at().atMm())
                .orElse(key.axis().atMm());
        double radius = keywork.tube().diameterMm(at) / 2 + keywork.tube().wallMm();
        double between = cup.map(found -> turn(keywork.holeOf(found), key))
                .orElseGet(() -> Math.min(0.5, reachOf(key) / radius));
        return new LeverFrame(radius, high, between);
    }

    private static double reachOf(Key key) {
        Touch touch = key.touch();
        return touch == null ? key.stop().armMm() : touch.armMm();
    }

    private static double turn(ToneHole hole, Key key) {
        double degrees = Wrapping.near(hole.at().angleDeg(), key.axis().angleDeg())
                - key.axis().angleDeg();
        return Math.toRadians(Math.abs(degrees));
    }

    double radius() {
        return radius;
    }

    Spot hinge() {
        return polar(hingeAngle, hingeRadius);
    }

    /** The middle of the hole, so high above the body; y grows downwards as on every drawing. */
    Spot aboveHole(double heightMm) {
        return polar(0, radius + heightMm);
    }

    /** A spot beside the middle of the hole: so far to the right, so high above the body. */
    Spot byHole(double rightMm, double heightMm) {
        return aboveHole(heightMm).plus(rightMm, 0);
    }

    /** A spot on the side of the hinge away from the cup, that far from the hinge and so high above the body. */
    Spot tail(double armMm, double heightMm) {
        return reach(armMm, heightMm, -1);
    }

    /** A spot on the cup's side of the hinge. */
    Spot front(double armMm, double heightMm) {
        return reach(armMm, heightMm, 1);
    }

    /** Where the circle about the hinge meets the circle about the tube; on the tangent when they do not meet. */
    private Spot reach(double armMm, double heightMm, int side) {
        double wanted = radius + heightMm;
        double cos = (hingeRadius * hingeRadius + wanted * wanted - armMm * armMm) / (2 * hingeRadius * wanted);
        if (Math.abs(cos) > 1) {
            Spot hinge = hinge();
            double tangent = hingeAngle + (side > 0 ? 0 : Math.PI);
            return hinge.along(tangent, armMm);
        }
        return polar(hingeAngle + side * Math.acos(cos), wanted);
    }

    private static Spot polar(double angle, double radius) {
        return new Spot(Math.sin(angle) * radius, -Math.cos(angle) * radius);
    }

    /** A spot turned about the hinge by the rotation of the key; positive opens, which lifts the cup. */
    Spot opened(Spot spot, double rotationRad) {
        Spot hinge = hinge();
        return hinge.along(hinge.bearing(spot) - rotationRad, hinge.distance(spot));
    }

    /** Where the foot of a stop touches when the key is shut, metal above the body by the clearance. */
    Spot foot(Stop stop) {
        return tail(stop.armMm(), Math.max(0.2, stop.clearanceMm()));
    }
}
