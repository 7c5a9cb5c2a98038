package hornwright.engines.air;

import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Pad;
import org.jspecify.annotations.Nullable;

/**
 * The lengths (m) of a hole's circuit, which do not depend on frequency.
 *
 * @param radius of the hole
 * @param boreRadius of the bore at its centre
 * @param inner added inside, both states
 * @param openLength of the chimney with the matching volume
 * @param closedLength the same, shortened by what the pad fills
 * @param openSeries series length, below zero
 * @param closedSeries the same for the closed hole
 * @param outer added outside, with the pad where it stands
 * @param outerSlope change of that per pad height; 0 for a bare hole
 */
record HoleShape(
        double radius,
        double boreRadius,
        double inner,
        double openLength,
        double closedLength,
        double openSeries,
        double closedSeries,
        double outer,
        double outerSlope) {
    static HoleShape of(Hole hole, double boreRadius) {
        double b = hole.radius();
        double delta = b / boreRadius;
        Pad pad = hole.pad();
        double left = hole.chimney() - (pad == null ? 0 : pad.protrusion());
        double matching = matching(b, delta);
        return new HoleShape(
                b,
                boreRadius,
                inner(b, delta),
                hole.chimney() + matching,
                left + matching,
                -(0.35 - 0.06 * Math.tanh(2.7 * hole.chimney() / b)) * b * delta * delta,
                -(0.12 + 0.17 * Math.tanh(2.4 * left / b)) * b * delta * delta,
                outer(hole, pad),
                pad == null || pad.height() <= 0
                        ? 0
                        : Radiation.padSlope(b, hole.rimWall(), pad.radius(), pad.height()));
    }

    private static double outer(Hole hole, @Nullable Pad pad) {
        return pad == null || pad.height() <= 0
                ? Radiation.rim(hole.radius(), hole.rimWall())
                : Radiation.pad(hole.radius(), hole.rimWall(), pad.radius(), pad.height());
    }

    /** Length of the wedge of air between the bore and the plane that touches it. */
    static double matching(double b, double delta) {
        return b * delta / 8 * (1 + 0.207 * delta * delta * delta);
    }

    static double inner(double b, double delta) {
        double sum = 0.502;
        for (double term : new double[] {-1.640, 2.138, -1.566, -0.095, 0.822}) {
            sum = sum * delta + term;
        }
        return b * sum;
    }
}
