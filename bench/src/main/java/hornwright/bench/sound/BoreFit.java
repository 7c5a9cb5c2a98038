package hornwright.bench.sound;

import hornwright.bench.horn.Keywork;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.Mouthpiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The mouthpiece volume and the smooth correction of the bore that best explain how a horn plays.
 *
 * <p>Six unknowns: the volume, three shares by which the diameter differs at the neck end, half way and at the bell with a
 * parabola between them, an offset all notes share (warm air, the player), and how far the open holes hear each other outside,
 * which the plain air column leaves out and which would else be taken for mouthpiece and bore. Before any note was heard a
 * share is taken as 0 ± 1 %, the volume as the pattern's ± 15 %, the offset as 0 ± 10 cents and the hearing as 0 ± 1 of what
 * the engine's interaction says (bench judgement, one standard deviation each); the fit is the most probable value, its
 * uncertainty that of the straightened model.
 *
 * @param volumeMm3 mouthpiece and reed
 * @param volumeU one standard uncertainty of it
 * @param bore shares at the neck end, half way and at the bell; 0.01 is 1 % wider
 * @param boreU their standard uncertainties
 * @param offsetCents what all notes share beyond mouthpiece and bore
 * @param offsetU one standard uncertainty of it
 * @param leftCents root mean square of what the fit leaves unexplained
 */
public record BoreFit(
        double volumeMm3,
        double volumeU,
        List<Double> bore,
        List<Double> boreU,
        double offsetCents,
        double offsetU,
        double leftCents) {
    /** Spreads taken before: of the volume as a share, of the diameters as shares, of the offset in cents. */
    private static final double VOLUME_SPREAD = 0.15;

    private static final double SHARE_SPREAD = 0.01;
    private static final double OFFSET_SPREAD = 10;
    private static final int UNKNOWN = 6;
    private static final int OFFSET = 4;
    private static final int OUTDOORS = 5;
    /** A small mouthpiece bends the slopes, so they are taken anew in every round, until nothing moves to speak of. */
    private static final int MOST_ROUNDS = 8;

    /** No unknown goes further than so many of the spreads taken before: a mouthpiece keeps two fifths of its volume. */
    private static final double WIDEST = 4;

    /** In spreads taken before. */
    private static final double SETTLED = 0.03;

    private static final double STEP = 0.05;

    public BoreFit {
        bore = List.copyOf(bore);
        boreU = List.copyOf(boreU);
    }

    /** Fits the pattern to what was heard; see {@link #of(Keywork, Air, HornShape, Map, double[], double)}. */
    public static BoreFit of(Keywork keywork, Air air, double[] measuredHz, double uCents) {
        return of(keywork, air, HornShape.PATTERN, Map.of(), measuredHz, uCents);
    }

    /**
     * Fits what was heard.
     *
     * @param shape what is known of the horn; its own fit does not matter
     * @param heightU one standard uncertainty of the front height by cup, mm; a height that is off moves several notes alike
     * @param measuredHz by fingering in the order of the keywork; NaN where nothing was heard
     * @param uCents one standard uncertainty of a note, player and model together
     */
    public static BoreFit of(
            Keywork keywork,
            Air air,
            HornShape shape,
            Map<String, Double> heightU,
            double[] measuredHz,
            double uCents) {
        HornShape bare = shape.fitted(null);
        AirInput pattern = heardOnly(HeightEffects.asked(HornAir.of(keywork, air, bare), false), measuredHz);
        double[] heard =
                java.util.Arrays.stream(measuredHz).filter(hz -> hz > 0).toArray();
        double[][] weight = NoteWeights.of(keywork, air, bare, heightU, measuredHz, uCents);
        double[] outdoors = outdoors(pattern);
        double[] x = new double[UNKNOWN];
        double[] left = left(pattern, outdoors, x, heard);
        double[][] covariance = new double[UNKNOWN][UNKNOWN];
        double moved = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS && moved > SETTLED; round++) {
            double[][] slopes = slopes(pattern, outdoors, x, heard, left);
            covariance = Inverse.of(information(slopes, weight));
            moved = step(x, covariance, slopes, NoteWeights.times(weight, left));
            left = left(pattern, outdoors, x, heard);
        }
        return told(keywork, x, covariance, left);
    }

    /** Goes to the most probable point of the straightened model; answers by how many prior spreads the furthest unknown moved. */
    private static double step(double[] x, double[][] covariance, double[][] slopes, double[] weighed) {
        double[] push = new double[UNKNOWN];
        for (int p = 0; p < UNKNOWN; p++) {
            push[p] = -x[p];
            for (int i = 0; i < weighed.length; i++) {
                push[p] += slopes[i][p] * weighed[i];
            }
        }
        double most = 0;
        for (int p = 0; p < UNKNOWN; p++) {
            double by = 0;
            for (int q = 0; q < UNKNOWN; q++) {
                by += covariance[p][q] * push[q];
            }
            double held = Math.clamp(x[p] + by, -WIDEST, WIDEST);
            most = Math.max(most, Math.abs(held - x[p]));
            x[p] = held;
        }
        return most;
    }

    private static BoreFit told(Keywork keywork, double[] x, double[][] covariance, double[] left) {
        double volume = keywork.tube().mouthpieceVolumeMm3();
        List<Double> bore = new ArrayList<>();
        List<Double> boreU = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            bore.add(x[i] * SHARE_SPREAD);
            boreU.add(Math.sqrt(covariance[i][i]) * SHARE_SPREAD);
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
                OFFSET_SPREAD * x[OFFSET],
                OFFSET_SPREAD * Math.sqrt(covariance[OFFSET][OFFSET]),
                Math.sqrt(squares));
    }

    /** Inverse covariance: what the notes say and what was taken before, unit by unit of the prior spread. */
    private static double[][] information(double[][] slopes, double[][] weight) {
        double[][] sum = new double[UNKNOWN][UNKNOWN];
        for (int q = 0; q < UNKNOWN; q++) {
            int column = q;
            double[] weighed = NoteWeights.times(
                    weight,
                    java.util.Arrays.stream(slopes)
                            .mapToDouble(row -> row[column])
                            .toArray());
            for (int p = 0; p < UNKNOWN; p++) {
                sum[p][q] = p == q ? 1 : 0;
                for (int i = 0; i < weighed.length; i++) {
                    sum[p][q] += slopes[i][p] * weighed[i];
                }
            }
        }
        return sum;
    }

    private static double[][] slopes(AirInput pattern, double[] outdoors, double[] x, double[] heard, double[] left) {
        double[][] slopes = new double[left.length][UNKNOWN];
        for (int p = 0; p < OFFSET; p++) {
            double[] moved = x.clone();
            moved[p] += STEP;
            double[] other = left(pattern, outdoors, moved, heard);
            for (int i = 0; i < left.length; i++) {
                slopes[i][p] = (left[i] - other[i]) / STEP;
            }
        }
        for (int i = 0; i < left.length; i++) {
            slopes[i][OFFSET] = OFFSET_SPREAD;
            slopes[i][OUTDOORS] = outdoors[i];
        }
        return slopes;
    }

    /** Cents by which the notes heard lie above the model. */
    private static double[] left(AirInput pattern, double[] outdoors, double[] x, double[] heard) {
        double volume = VOLUME_SPREAD * x[0];
        List<Double> shares = List.of(SHARE_SPREAD * x[1], SHARE_SPREAD * x[2], SHARE_SPREAD * x[3]);
        double[] model = HeightEffects.frequencies(AirColumn.resonances(changed(pattern, volume, shares)));
        double[] left = new double[heard.length];
        for (int i = 0; i < left.length; i++) {
            double cents =
                    HeightEffects.cents(model[i], heard[i]) - OFFSET_SPREAD * x[OFFSET] - outdoors[i] * x[OUTDOORS];
            left[i] = Double.isFinite(cents) ? cents : 0;
        }
        return left;
    }

    /** Cents every note moves when the open holes hear each other. */
    private static double[] outdoors(AirInput pattern) {
        double[] deaf = HeightEffects.frequencies(AirColumn.resonances(pattern));
        double[] hearing = HeightEffects.frequencies(AirColumn.resonances(pattern.interacting()));
        double[] cents = new double[deaf.length];
        for (int i = 0; i < cents.length; i++) {
            double moved = HeightEffects.cents(deaf[i], hearing[i]);
            cents[i] = Double.isFinite(moved) ? moved : 0;
        }
        return cents;
    }

    private static AirInput heardOnly(AirInput all, double[] measuredHz) {
        List<AirInput.Fingering> heard = new ArrayList<>();
        for (int i = 0; i < measuredHz.length; i++) {
            if (measuredHz[i] > 0) {
                heard.add(all.fingerings().get(i));
            }
        }
        return all.withFingerings(heard);
    }

    /** The horn with this mouthpiece and bore in place of the pattern's. */
    AirInput on(AirInput pattern) {
        double of = ((Mouthpiece.Cavity) pattern.mouthpiece()).volume();
        return changed(pattern, volumeMm3 * 1e-9 / of - 1, bore);
    }

    /** With the volume larger by a share and the bore wider by three. */
    private static AirInput changed(AirInput pattern, double volumeShare, List<Double> shares) {
        double volume = ((Mouthpiece.Cavity) pattern.mouthpiece()).volume() * (1 + volumeShare);
        double end = pattern.bore().getLast().at();
        List<BorePoint> bore = pattern.bore().stream()
                .map(point -> new BorePoint(point.at(), point.radius() * (1 + share(shares, point.at() / end))))
                .toList();
        return pattern.withMouthpiece(new Mouthpiece.Cavity(volume)).withBore(bore);
    }

    private static double share(List<Double> x, double s) {
        return x.get(0) * (1 - s) * (1 - 2 * s) + x.get(1) * 4 * s * (1 - s) + x.get(2) * s * (2 * s - 1);
    }
}
