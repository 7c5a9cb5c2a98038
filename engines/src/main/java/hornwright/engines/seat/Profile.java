package hornwright.engines.seat;

import java.util.List;

/**
 * Height of a rim or a pad face round the hole, in m; higher means more compression. Angles in radians from the front
 * (the side away from the hinge).
 */
public sealed interface Profile {
    /** Level all round. */
    Profile FLAT = new Harmonics(List.of());

    /** One wave round the rim: cos·cos(n φ) + sin·sin(n φ). */
    record Harmonic(int order, double cos, double sin) {
        public Harmonic {
            if (order < 0 || !Double.isFinite(cos) || !Double.isFinite(sin)) {
                throw new IllegalArgumentException("a harmonic has a whole order from 0 and finite amplitudes");
            }
        }
    }

    /** A measured height at an angle. */
    record Point(double angle, double height) {}

    /** A sum of waves. */
    record Harmonics(List<Harmonic> terms) implements Profile {
        public Harmonics {
            terms = List.copyOf(terms);
        }
    }

    /** Straight lines between points, the last closing on the first. */
    record Points(List<Point> points) implements Profile {
        /** Fewer points than this do not describe a rim. */
        public static final int FEWEST = 8;

        public Points {
            points = List.copyOf(points);
            if (points.size() < FEWEST) {
                throw new IllegalArgumentException("a profile has at least " + FEWEST + " points");
            }
            double before = Double.NEGATIVE_INFINITY;
            for (Point point : points) {
                boolean inTurn = point.angle() >= 0 && point.angle() < 2 * Math.PI && point.angle() > before;
                if (!inTurn || !Double.isFinite(point.height())) {
                    throw new IllegalArgumentException("points ascend within one turn and have finite heights");
                }
                before = point.angle();
            }
        }

        /** Height at an angle within [0, 2π]. */
        double at(double angle) {
            int after = 0;
            while (after < points.size() && points.get(after).angle() <= angle) {
                after++;
            }
            Point left = points.get((after + points.size() - 1) % points.size());
            Point right = points.get(after % points.size());
            double from = after == 0 ? left.angle() - 2 * Math.PI : left.angle();
            double to = after == points.size() ? right.angle() + 2 * Math.PI : right.angle();
            return left.height() + (right.height() - left.height()) * (angle - from) / (to - from);
        }
    }
}
