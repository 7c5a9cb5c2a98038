package hornwright.engines.action;

import java.util.List;

/** A lump of a key and its share of the moment of inertia about the key's axis. Masses in kg, lengths in m. */
public sealed interface KeyPart {

    /** A cup, pad or resonator whose face lies along the axis, its centre at an arm from it. */
    record Disc(double mass, double radius, double thickness, double arm) implements KeyPart {
        public Disc {
            require(mass, radius, thickness, arm);
        }

        @Override
        public double inertia() {
            return mass * (radius * radius / 4 + thickness * thickness / 12 + arm * arm);
        }
    }

    /** A disc that turns in its own plane, such as a rocker. */
    record Wheel(double mass, double radius, double arm) implements KeyPart {
        public Wheel {
            require(mass, radius, arm);
        }

        @Override
        public double inertia() {
            return mass * (radius * radius / 2 + arm * arm);
        }
    }

    /** A straight arm that points away from the axis, its middle at an arm from it. */
    record Bar(double mass, double length, double arm) implements KeyPart {
        public Bar {
            require(mass, length, arm);
        }

        @Override
        public double inertia() {
            return mass * (length * length / 12 + arm * arm);
        }
    }

    /** A lump small against its arm. */
    record Point(double mass, double arm) implements KeyPart {
        public Point {
            require(mass, arm);
        }

        @Override
        public double inertia() {
            return mass * arm * arm;
        }
    }

    /** Moment of inertia about the axis, kg m². */
    double inertia();

    /** Sum over the parts, kg m². */
    static double inertia(List<KeyPart> parts) {
        return parts.stream().mapToDouble(KeyPart::inertia).sum();
    }

    private static void require(double... sizes) {
        for (double size : sizes) {
            if (!(size >= 0) || Double.isInfinite(size)) {
                throw new IllegalArgumentException("masses and lengths are not negative");
            }
        }
    }
}
