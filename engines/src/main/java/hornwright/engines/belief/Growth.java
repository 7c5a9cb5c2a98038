package hornwright.engines.belief;

import java.util.Arrays;

/**
 * The stages of one growing interval around a cut. Stage i holds the gaps before positions low[i] … high[i], one gap
 * more than the stage before; the last is reached when the next gap wanted belongs to a neighbouring cut or is none.
 */
final class Growth {
    /** Two chances of a change this close (relative) count as equal: they differ by rounding. */
    private static final double EQUAL = 1e-9;

    final int[] low;
    final int[] high;
    private final int cut;
    /** How many stages a segment spans that starts d + 1 before, or ends d + 1 after, the cut. */
    private final int[] spannedBefore;

    private final int[] spannedAfter;
    /** Probability of the segments that span exactly the first i + 1 stages. */
    private final double[] spanned;

    /** @param above position of the neighbouring cut below, or 0; @param below that of the one above, or the number of positions */
    Growth(int cut, int above, int below, double[] cutBefore) {
        this.cut = cut;
        int[] lows = new int[below - above];
        int[] highs = new int[below - above];
        int a = cut;
        int b = cut;
        int stages = 0;
        while (a > above && b < below) {
            lows[stages] = a;
            highs[stages++] = b;
            boolean lower = lowerIsLikelier(a, b, cutBefore);
            a -= lower ? 1 : 0;
            b += lower ? 0 : 1;
        }
        low = Arrays.copyOf(lows, stages);
        high = Arrays.copyOf(highs, stages);
        spanned = new double[stages];
        spannedBefore = reach(cut - low[stages - 1], cut, low);
        spannedAfter = reach(high[stages - 1] - cut, cut, high);
    }

    private static boolean lowerIsLikelier(int a, int b, double[] cutBefore) {
        int n = cutBefore.length - 1;
        if (a == 1 || b == n - 1) {
            return a > 1;
        }
        return cutBefore[a - 1] >= cutBefore[b + 1] * (1 - EQUAL);
    }

    private static int[] reach(int farthest, int cut, int[] edge) {
        int[] stages = new int[farthest + 1];
        for (int stage = 0; stage < edge.length; stage++) {
            stages[Math.abs(edge[stage] - cut)] = stage + 1;
        }
        return stages;
    }

    /** A segment that starts before the cut and ends after it. */
    void span(int start, int end, double probability) {
        int before = spannedBefore[Math.min(cut - start, spannedBefore.length) - 1];
        int after = spannedAfter[Math.min(end - cut, spannedAfter.length) - 1];
        spanned[Math.min(before, after) - 1] += probability;
    }

    /** Probability of at least one change inside, stage by stage. */
    double[] broken() {
        double[] broken = new double[spanned.length];
        double unbroken = 0;
        for (int i = broken.length - 1; i >= 0; i--) {
            unbroken += spanned[i];
            broken[i] = Math.max(0, 1 - unbroken);
        }
        return broken;
    }
}
