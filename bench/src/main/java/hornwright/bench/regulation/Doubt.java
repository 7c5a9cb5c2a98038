package hornwright.bench.regulation;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How far the gaps may open beyond what is expected after a round of work.
 *
 * @param ownU one standard uncertainty with which each judged gap was itself read, mm; infinite where it was not
 * @param times how many times as hard as its touch was made for each key is pressed
 * @param giveShare by which share of the force what gives under it may differ from the pattern's
 * @param handMm one standard uncertainty of each contact once it was altered
 */
record Doubt(GapModel judged, Fit fit, double[] ownU, double times, double giveShare, double[] handMm) {
    /** Steps along a direction of doubt to see what opens: two standard uncertainties, but never far, mm. */
    private static final double FAR = 2;

    private static final double STEP_MM = 0.04;

    /**
     * One standard uncertainty of each gap on its open side. A pad pressed in hardly moves where an open one moves at once,
     * so slopes at the place expected would promise too much; a step both ways along each direction sees the bend. A gap that
     * was itself read is never less sure than its reading. What the action gives under the finger comes on top.
     */
    double[] gapUMm(double[] change) {
        double[] square = opening(change, columns(fit.covariance()));
        for (int gap = 0; gap < square.length; gap++) {
            square[gap] = Math.min(square[gap], ownU[gap] * ownU[gap]);
        }
        double[] gives = judged.givesMm(fit.left(change), times, giveShare);
        double[] cutting = opening(change, cuts(change));
        for (int gap = 0; gap < square.length; gap++) {
            square[gap] = Math.sqrt(square[gap] + cutting[gap] + gives[gap] * gives[gap]);
        }
        return square;
    }

    /** Squares of how far gaps open along these directions, each one standard uncertainty long. */
    private double[] opening(double[] change, double[][] directions) {
        double[] here = judged.gapsMm(fit.left(change), times);
        double[] square = new double[here.length];
        for (double[] direction : directions) {
            double longest = Arrays.stream(direction).map(Math::abs).max().orElse(0);
            double step = Math.min(FAR, STEP_MM / Math.max(longest, 1e-9));
            double[] up = judged.gapsMm(moved(change, direction, step), times);
            double[] down = judged.gapsMm(moved(change, direction, -step), times);
            for (int gap = 0; gap < here.length; gap++) {
                double opens = Math.max(0, Math.max(up[gap], down[gap]) - here[gap]) / step;
                square[gap] += opens * opens;
            }
        }
        return square;
    }

    private static double[][] columns(double[][] covariance) {
        double[][] root = Normal.root(covariance);
        double[][] columns = new double[root.length][root.length];
        for (int i = 0; i < root.length; i++) {
            for (int k = 0; k <= i; k++) {
                columns[k][i] = root[i][k];
            }
        }
        return columns;
    }

    /** One direction for each contact that is altered: the hand errs at each of them alone. */
    private double[][] cuts(double[] change) {
        int[] altered =
                IntStream.range(0, change.length).filter(i -> change[i] != 0).toArray();
        double[][] directions = new double[altered.length][change.length];
        for (int i = 0; i < altered.length; i++) {
            directions[i][altered[i]] = handMm[altered[i]];
        }
        return directions;
    }

    private double[] moved(double[] change, double[] direction, double step) {
        double[] moved = fit.left(change);
        for (int i = 0; i < moved.length; i++) {
            moved[i] += step * direction[i];
        }
        return moved;
    }
}
