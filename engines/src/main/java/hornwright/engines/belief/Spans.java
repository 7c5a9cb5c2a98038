package hornwright.engines.belief;

import hornwright.engines.belief.BeliefAnswer.ChangeOver;
import java.util.ArrayList;
import java.util.List;

/**
 * An interval around each change between two likeliest stretches that holds at least one change with probability 0.95.
 *
 * <p>It starts as the gap of the change and takes one neighbouring gap after another on the side where a change is
 * likelier, until it holds 0.95 or the whole line; intervals of neighbouring changes may overlap. A change lies anywhere in its gap with equal
 * chance, so of the last gap only as much is taken as is needed; of a first gap that alone holds more, the middle.
 */
final class Spans {
    private static final double ENOUGH = 0.95;

    private final Weighed courses;
    private final double[] changed;
    private final long[] serials;

    Spans(Weighed courses, double[] changed, long[] serials) {
        this.courses = courses;
        this.changed = changed;
        this.serials = serials;
    }

    /** @param start first position of each stretch; one interval before each but the first */
    List<ChangeOver> around(int[] start) {
        List<ChangeOver> overs = new ArrayList<>();
        for (int i = 1; i < start.length; i++) {
            overs.add(grow(start[i]).over(serials));
        }
        return overs;
    }

    private Grown grow(int cut) {
        Weighed.Stretch stretch = courses.new Stretch(cut);
        double holds = stretch.changed();
        if (holds >= ENOUGH) {
            return new Grown(stretch.low(), stretch.high(), Last.BOTH, ENOUGH / holds, holds);
        }
        double before = holds;
        Last last = Last.NONE;
        while (holds < ENOUGH && (stretch.low() > 0 || stretch.high() + 1 < serials.length)) {
            last = lowerIsLikelier(stretch) ? Last.LOW : Last.HIGH;
            if (last == Last.LOW) {
                stretch.lower();
            } else {
                stretch.higher();
            }
            before = holds;
            holds = Math.max(before, stretch.changed());
        }
        if (holds < ENOUGH) {
            return new Grown(stretch.low(), stretch.high(), Last.NONE, 1, holds);
        }
        return new Grown(stretch.low(), stretch.high(), last, (ENOUGH - before) / (holds - before), holds);
    }

    private boolean lowerIsLikelier(Weighed.Stretch stretch) {
        if (stretch.low() == 0 || stretch.high() + 1 == serials.length) {
            return stretch.low() > 0;
        }
        return changed[stretch.low()] >= changed[stretch.high() + 1];
    }

    /** Which gap was taken last and need not be taken whole. */
    private enum Last {
        NONE,
        LOW,
        HIGH,
        BOTH
    }

    /** @param share of the last gap that is needed */
    private record Grown(int low, int high, Last last, double share, double holds) {
        ChangeOver over(long[] serials) {
            double from = serials[low];
            double to = serials[high];
            double spare = 1 - share;
            switch (last) {
                case LOW -> from += spare * (serials[low + 1] - serials[low]);
                case HIGH -> to -= spare * (serials[high] - serials[high - 1]);
                case BOTH -> {
                    double half = spare / 2 * (to - from);
                    from += half;
                    to -= half;
                }
                case NONE -> {}
            }
            return new ChangeOver((long) Math.floor(from), (long) Math.ceil(to), Math.min(holds, ENOUGH));
        }
    }
}
