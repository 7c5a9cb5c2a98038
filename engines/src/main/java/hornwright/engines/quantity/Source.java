package hornwright.engines.quantity;

import java.util.List;

/**
 * Where a number comes from. Five kinds are leaves; {@link Derived} points at the numbers it was made of, so any number
 * can be followed down until only leaves are left.
 */
public sealed interface Source {
    /** One line a person can read. */
    String inWords();

    /** Measured here: the instrument and the id of the reading. */
    record Instrumented(String instrument, String reading) implements Source {
        public Instrumented {
            requireText(instrument, "instrument");
            requireText(reading, "reading");
        }

        @Override
        public String inWords() {
            return "reading " + reading + ", " + instrument;
        }
    }

    /** A publication: author, title, year. */
    record Published(String citation) implements Source {
        public Published {
            requireText(citation, "citation");
        }

        @Override
        public String inWords() {
            return citation;
        }
    }

    /** A rule the shop has set, or left at its typical value. */
    record ShopRule(String rule, boolean asShipped) implements Source {
        public ShopRule {
            requireText(rule, "rule");
        }

        @Override
        public String inWords() {
            return "shop rule " + rule + (asShipped ? " (typical, check yours)" : "");
        }
    }

    /** What the trade usually does, without a published figure behind it. */
    record CommonPractice(String what) implements Source {
        public CommonPractice {
            requireText(what, "what");
        }

        @Override
        public String inWords() {
            return "common practice: " + what;
        }
    }

    /** Reckoned from other numbers by a rule said in words. */
    record Derived(String rule, List<Input> inputs) implements Source {
        public Derived {
            requireText(rule, "rule");
            inputs = List.copyOf(inputs);
            if (inputs.isEmpty()) {
                throw new IllegalArgumentException("a derived number needs at least one input: " + rule);
            }
        }

        @Override
        public String inWords() {
            return rule;
        }
    }

    /** Taken for want of better; the reason says what stands behind it (demo data, a decision, a guess). */
    record Assumed(String why) implements Source {
        public Assumed {
            requireText(why, "why");
        }

        @Override
        public String inWords() {
            return "assumed: " + why;
        }
    }

    /** One named number that went into a derived one. */
    record Input(String name, Measured<?> number) {
        public Input {
            requireText(name, "name");
        }
    }

    /** Every leaf under this source, first met first; a leaf is its own only leaf. */
    default List<Source> leaves() {
        return switch (this) {
            case Derived derived ->
                derived.inputs().stream()
                        .flatMap(input -> input.number().source().leaves().stream())
                        .distinct()
                        .toList();
            default -> List.of(this);
        };
    }

    private static void requireText(String text, String name) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("a source must say its " + name);
        }
    }
}
