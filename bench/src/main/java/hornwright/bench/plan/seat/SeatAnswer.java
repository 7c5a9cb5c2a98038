package hornwright.bench.plan.seat;

import hornwright.bench.care.Hazard;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.survey.PadClass;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one pad closes.
 *
 * @param gap worst gap left at a light touch, mm
 * @param clock where that is, 12 away from the hinge
 * @param leak mL/s at 1 kPa at a light touch
 * @param hole the one sharp-edged hole that leaks as much, mm
 * @param seals force on the pad at which the last gap closes, N
 * @param atTouch how much more the finger gives to seal than to shut; null for a key without its own closing touch
 * @param springs how many times over its springs seal it; null for a pad that rests open
 * @param stiffness of the pad, MPa
 * @param pad its class, and why it is of that
 * @param rimRead whether the rim was measured, or is only supposed to be as rims are
 * @param compromiseOverMm the rim gap a soft pad is laid over instead of mending it; null where it is not
 * @param round gap round the rim with each class of pad
 * @param remedies in the order of how little they intrude; empty when the pad closes
 */
public record SeatAnswer(
        String cup,
        String name,
        PlannedNumber gap,
        double clock,
        PlannedNumber leak,
        PlannedNumber hole,
        PlannedNumber seals,
        @Nullable PlannedNumber atTouch,
        @Nullable PlannedNumber springs,
        PlannedNumber stiffness,
        ClassOfPad pad,
        boolean rimRead,
        @Nullable Double compromiseOverMm,
        Closes closes,
        List<Round> round,
        List<Remedy> remedies,
        Becauses becauses) {
    public SeatAnswer {
        round = List.copyOf(round);
        remedies = List.copyOf(remedies);
    }

    /** What may be said of it before anybody has tried. */
    public enum Closes {
        CLOSES("should close"),
        MAY_LEAK("may leak"),
        LEAKS("will leak");

        private final String word;

        Closes(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * The gap round the rim with one class of pad.
     *
     * @param gapsMm at equal steps by the clock, from 12
     */
    public record Round(PadClass padClass, List<Double> gapsMm) {
        public Round {
            gapsMm = List.copyOf(gapsMm);
        }
    }

    /**
     * One thing to do.
     *
     * @param leakAfter what the engine gives with it done; null where no number can be given
     * @param cost time, in words
     * @param reversible whether it can be undone, in words
     */
    public record Remedy(
            String words, @Nullable PlannedNumber leakAfter, String cost, String reversible, List<Hazard> cautions) {
        public Remedy {
            cautions = List.copyOf(cautions);
        }
    }
}
