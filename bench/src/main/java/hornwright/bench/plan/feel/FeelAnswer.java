package hornwright.bench.plan.feel;

import hornwright.bench.action.Action;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The feel of one action.
 *
 * @param action with every spring as it is thought to be
 * @param hands touches that are felt together, in the order of the keywork
 * @param balances of the keys that a lever holds shut against their own spring
 */
public record FeelAnswer(Action action, List<Hand> hands, List<Balance> balances, Becauses becauses) {
    public FeelAnswer {
        hands = List.copyOf(hands);
        balances = List.copyOf(balances);
    }

    public Optional<Finger> finger(String key) {
        return hands.stream()
                .flatMap(hand -> hand.fingers().stream())
                .filter(finger -> finger.key().equals(key))
                .findFirst();
    }

    /**
     * Touches that one hand compares.
     *
     * @param band what is usual
     * @param evening null where evenness is no aim, as among palm keys
     */
    public record Hand(
            String title,
            Band band,
            List<Finger> fingers,
            @Nullable Evened evening) {
        public Hand {
            fingers = List.copyOf(fingers);
        }
    }

    /** What is usual for a touch of that sort. */
    public record Band(PlannedNumber least, PlannedNumber most) {
        /** A share of it: beyond either end only by more than the ± does a touch count as light or heavy. */
        public Weight of(PlannedNumber force) {
            double sure = 2 * force.u();
            if (force.value() > most.value()) {
                return force.value() - sure > most.value() ? Weight.HEAVY : Weight.PERHAPS_HEAVY;
            }
            if (force.value() < least.value()) {
                return force.value() + sure < least.value() ? Weight.LIGHT : Weight.PERHAPS_LIGHT;
            }
            return Weight.USUAL;
        }
    }

    /** How a touch compares with what is usual. */
    public enum Weight {
        LIGHT("light"),
        PERHAPS_LIGHT("perhaps light"),
        USUAL("usual"),
        PERHAPS_HEAVY("perhaps heavy"),
        HEAVY("heavy");

        private final String word;

        Weight(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * One touch.
     *
     * @param force least at the touch at which its work is done
     * @param read whether somebody weighed it
     * @param wires the same key with the next weaker and the next stronger wire; empty for a strip
     */
    public record Finger(String key, String name, PlannedNumber force, boolean read, List<Wire> wires) {
        public Finger {
            wires = List.copyOf(wires);
        }

        Because.Input input() {
            return Because.Input.of(name, force);
        }
    }

    /** A spring of another size in its place, bent as far: what changes at the touch, and what it then asks for. */
    public record Wire(String sizeWord, double sizeMm, PlannedNumber change, PlannedNumber force) {}

    /**
     * The fewest springs that make a stack even.
     *
     * @param worst how far the worst touch is from the middle one, as a share
     * @param aim share within which they count as even
     * @param changes the one that helps most first; empty when it is even, or when nothing helps
     * @param after touches that move, once all is changed
     * @param worstAfter the same with the changes made
     */
    public record Evened(
            PlannedNumber worst, PlannedNumber aim, List<Change> changes, List<Moved> after, PlannedNumber worstAfter) {
        public Evened {
            changes = List.copyOf(changes);
            after = List.copyOf(after);
        }

        public boolean even() {
            return worst.value() <= aim.value();
        }
    }

    /** One spring made stronger or weaker, as a share of what it pulls: -0.1 is a tenth weaker. */
    public record Change(String key, String name, PlannedNumber share) {}

    /** A touch that is felt otherwise after a change. */
    public record Moved(String key, String name, PlannedNumber change, PlannedNumber force) {}

    /**
     * A cup that its own spring would open and that a stronger lever holds shut.
     *
     * @param held force with which the lever holds the pad on its hole
     * @param times how many times the lever's spring is what the cup's spring takes
     * @param least force with which a pad should be held
     * @param tries as it is first, then each of the two springs one size down and up
     */
    public record Balance(
            String lever,
            String cup,
            String leverName,
            String cupName,
            PlannedNumber held,
            PlannedNumber times,
            PlannedNumber least,
            List<Try> tries) {
        public Balance {
            tries = List.copyOf(tries);
        }
    }

    /**
     * One pair of springs tried.
     *
     * @param what was changed, in words
     * @param held null when the pad is not held shut at all
     * @param touches what the touches that work the lever ask for
     */
    public record Try(String what, @Nullable PlannedNumber held, List<Moved> touches) {
        public Try {
            touches = List.copyOf(touches);
        }
    }
}
