package hornwright.bench.sound;

import hornwright.bench.horn.Keywork;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.Mouthpiece;
import java.util.ArrayList;
import java.util.List;

/**
 * The mouthpiece volume and the smooth correction of the bore that best explain how a horn plays.
 *
 * <p>Four unknowns: the volume, and three shares by which the diameter differs at the neck end, half way and at the bell, a
 * parabola between them. Before any note was heard a share is taken as 0 ± 1 % and the volume as the pattern's ± 15 % (bench
 * judgement); the fit is the most probable value, its uncertainty that of the straightened model.
 *
 * @param volumeMm3 mouthpiece and reed
 * @param volumeU one standard uncertainty of it
 * @param bore shares at the neck end, half way and at the bell; 0.01 is 1 % wider
 * @param boreU their standard uncertainties
 * @param leftCents root mean square of what the fit leaves unexplained
 */
public record BoreFit(double volumeMm3, double volumeU, double[] bore, double[] boreU, double leftCents) {
    private static final double SHARE_SPREAD = 0.01;
    private static final double VOLUME_SPREAD = 0.15;
    private static final int ROUNDS = 3;
    private static final double STEP = 0.05;

    /**
     * Fits what was heard.
     *
     * @param measuredHz by fingering in the order of the keywork; NaN where nothing was heard
     * @param uCents one standard uncertainty of a note
     */
    public static BoreFit of(Keywork keywork, Air air, double[] measuredHz, double uCents) {
        AirInput pattern = HeightEffects.asked(HornAir.asBuilt(keywork, air), false);
        double[] x = new double[4];
        double[][] covariance = new double[4][4];
        double[] left = left(pattern, x, measuredHz);
        for (int round = 0; round < ROUNDS; round++) {
            double[][] slopes = slopes(pattern, x, measuredHz, left);
            covariance = Inverse.of(information(slopes, uCents));
            double[] push = new double[4];
            for (int p = 0; p < 4; p++) {
                push[p] = -x[p];
                for (int i = 0; i < left.length; i++) {
                    push[p] += slopes[i][p] * left[i] / (uCents * uCents);
                }
            }
            for (int p = 0; p < 4; p++) {
                for (int q = 0; q < 4; q++) {
                    x[p] += covariance[p][q] * push[q];
                }
            }
            left = left(pattern, x, measuredHz);
        }
        return told(keywork, x, covariance, left);
    }

    private static BoreFit told(Keywork keywork, double[] x, double[][] covariance, double[] left) {
        double volume = keywork.tube().mouthpieceVolumeMm3();
        double[] bore = new double[3];
        double[] boreU = new double[3];
        for (int i = 0; i < 3; i++) {
            bore[i] = x[i + 1] * SHARE_SPREAD;
            boreU[i] = Math.sqrt(covariance[i + 1][i + 1]) * SHARE_SPREAD;
        }
        double squares = 0;
        for (double cents : left) {
            squares += cents * cents / left.length;
        }
        return new BoreFit(
                volume * (1 + VOLUME_SPREAD * x[0]),
                volume * VOLUME_SPREAD * Math.sqrt(covariance[0][0]),
                bore,
                boreU,
                Math.sqrt(squares));
    }

    /** Inverse covariance: what the notes say and what was taken before, unit by unit of the prior spread. */
    private static double[][] information(double[][] slopes, double u) {
        double[][] sum = new double[4][4];
        for (int p = 0; p < 4; p++) {
            for (int q = 0; q < 4; q++) {
                sum[p][q] = p == q ? 1 : 0;
                for (double[] row : slopes) {
                    sum[p][q] += row[p] * row[q] / (u * u);
                }
            }
        }
        return sum;
    }

    private static double[][] slopes(AirInput pattern, double[] x, double[] measured, double[] left) {
        double[][] slopes = new double[left.length][4];
        for (int p = 0; p < 4; p++) {
            double[] moved = x.clone();
            moved[p] += STEP;
            double[] other = left(pattern, moved, measured);
            for (int i = 0; i < left.length; i++) {
                slopes[i][p] = (left[i] - other[i]) / STEP;
            }
        }
        return slopes;
    }

    /** Cents by which the notes heard lie above the model, heard ones only. */
    private static double[] left(AirInput pattern, double[] x, double[] measured) {
        double[] model = HeightEffects.frequencies(AirColumn.reckon(changed(pattern, x)));
        List<Double> left = new ArrayList<>();
        for (int i = 0; i < measured.length; i++) {
            if (measured[i] > 0 && pattern.fingerings().size() > i) {
                left.add(HeightEffects.cents(model[i], measured[i]));
            }
        }
        return left.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The horn with its volume and bore changed, {@code x} in units of the spreads taken before. */
    static AirInput changed(AirInput pattern, double[] x) {
        double volume = ((Mouthpiece.Cavity) pattern.mouthpiece()).volume() * (1 + VOLUME_SPREAD * x[0]);
        double end = pattern.bore().getLast().at();
        List<BorePoint> bore = pattern.bore().stream()
                .map(point ->
                        new BorePoint(point.at(), point.radius() * (1 + SHARE_SPREAD * share(x, point.at() / end))))
                .toList();
        return pattern.withMouthpiece(new Mouthpiece.Cavity(volume)).withBore(bore);
    }

    private static double share(double[] x, double s) {
        return x[1] * (1 - s) * (1 - 2 * s) + x[2] * 4 * s * (1 - s) + x[3] * s * (2 * s - 1);
    }
}
