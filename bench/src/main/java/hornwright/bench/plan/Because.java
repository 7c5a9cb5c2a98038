package hornwright.bench.plan;

import hornwright.bench.rules.Mark;
import java.util.List;

/**
 * Why a number is so: a rule in words, the numbers it was made of, and where it comes from. Followed down through
 * {@link Derived} it ends in leaves only.
 */
public sealed interface Because {
    /** Stable in the plan: {@code pad.d/diameter}, {@code reading r.010}, {@code rule pad.step_mm}. */
    String id();

    /** One line a person can read. */
    String rule();

    default List<Input> inputs() {
        return List.of();
    }

    /** One named number that went into another, and its own because. */
    record Input(String name, double value, String unit, double u, String because) {
        public static Input of(String name, PlannedNumber number) {
            return new Input(name, number.value(), number.unit(), number.u(), number.because());
        }
    }

    /** Reckoned from other numbers. */
    record Derived(String id, String rule, List<Input> inputs) implements Because {
        public Derived {
            inputs = List.copyOf(inputs);
            if (inputs.isEmpty()) {
                throw new IllegalArgumentException("a derived number needs at least one input: " + rule);
            }
        }
    }

    /** Where the following down ends. */
    sealed interface Leaf extends Because {
        /** The sort of ground this is, in one or two words. */
        String kind();
    }

    /** Measured on this horn. */
    record FromReading(String id, String rule, String reading, String instrument) implements Leaf {
        @Override
        public String kind() {
            return "reading";
        }
    }

    /** Found on this horn when it was looked over. */
    record FromFinding(String id, String rule, String place) implements Leaf {
        @Override
        public String kind() {
            return "finding";
        }
    }

    /** A rule of the shop, set by it or left as it came. */
    record FromRule(String id, String rule, String shopRule, Mark mark, boolean asShipped) implements Leaf {
        @Override
        public String kind() {
            if (mark == Mark.MEASURED) {
                return mark.word();
            }
            return asShipped ? "shop rule, " + mark.word() + ", typical" : "shop rule";
        }
    }

    /** The shelf. */
    record FromStock(String id, String rule, String item) implements Leaf {
        @Override
        public String kind() {
            return "stock";
        }
    }

    /** The pattern of the maker as the keywork file has it. */
    record FromPattern(String id, String rule, String keywork) implements Leaf {
        @Override
        public String kind() {
            return "pattern";
        }
    }

    /** What witnesses and documents say of horns like this one. */
    record FromArchive(String id, String rule, String place) implements Leaf {
        @Override
        public String kind() {
            return "archive";
        }
    }

    /** Settled by a person. */
    record Decided(String id, String rule) implements Leaf {
        @Override
        public String kind() {
            return "decision";
        }
    }

    /** A publication: author, title, year. */
    record Cited(String id, String rule, String citation) implements Leaf {
        @Override
        public String kind() {
            return "publication";
        }
    }

    /** What the trade usually does. */
    record CommonPractice(String id, String rule) implements Leaf {
        @Override
        public String kind() {
            return "common practice";
        }
    }

    /** What a bench goes by without a published source. */
    record BenchJudgement(String id, String rule) implements Leaf {
        @Override
        public String kind() {
            return "bench judgement";
        }
    }

    /** Invented for the demo. */
    record Demo(String id, String rule) implements Leaf {
        @Override
        public String kind() {
            return "demo";
        }
    }
}
