package hornwright.benchmarks;

import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Curve;
import hornwright.engines.air.AirInput.Fingering;
import hornwright.engines.air.AirResult.ImpedanceCurve;
import java.util.List;
import java.util.Objects;

/**
 * The lowest resonance of every fingering off its impedance curve, half a hertz apart up to 550 Hz: every matrix reckoned
 * again for every fingering and frequency, and no better than the grid.
 */
final class PlainAir {
    static final double STEP = 0.5;
    private static final double FROM = 100;
    private static final int POINTS = 901;

    private final AirInput horn;

    PlainAir(AirInput horn) {
        this.horn = horn;
    }

    double[] lowest() {
        return horn.fingerings().stream().mapToDouble(this::lowest).toArray();
    }

    private double lowest(Fingering fingering) {
        AirInput one = new AirInput(
                horn.air(),
                horn.bore(),
                horn.mouthpiece(),
                horn.bell(),
                horn.holes(),
                List.of(new Fingering(fingering.open(), 1)),
                List.of(),
                true,
                false,
                1,
                false,
                new Curve(FROM, FROM + STEP * (POINTS - 1), POINTS));
        ImpedanceCurve curve = Objects.requireNonNull(
                AirColumn.reckon(one).fingerings().getFirst().curve());
        for (int i = 1; i < POINTS - 1; i++) {
            if (size(curve, i) > size(curve, i - 1) && size(curve, i) >= size(curve, i + 1)) {
                return curve.frequency()[i];
            }
        }
        return Double.NaN;
    }

    private static double size(ImpedanceCurve curve, int i) {
        return Math.hypot(curve.re()[i], curve.im()[i]);
    }
}
