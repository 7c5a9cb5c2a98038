package hornwright.bench.archive;

import hornwright.engines.belief.Belief;
import hornwright.engines.belief.BeliefAnswer;
import hornwright.engines.belief.BeliefQuestion;
import java.util.HashMap;
import java.util.Map;

/** Answers of the change-over engine, each worked out once: places of one family mostly ask the same. */
final class Answers {
    private final Map<BeliefQuestion, BeliefAnswer> known = new HashMap<>();

    BeliefAnswer to(BeliefQuestion question) {
        return known.computeIfAbsent(question, Belief::of);
    }
}
