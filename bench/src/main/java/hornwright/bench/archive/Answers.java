package hornwright.bench.archive;

import hornwright.engines.belief.WorkshopAnswer;
import hornwright.engines.belief.WorkshopBelief;
import hornwright.engines.belief.WorkshopQuestion;
import java.util.HashMap;
import java.util.Map;

/** Answers of the engine, each worked out once: places of one family mostly ask the same. */
final class Answers {
    private final Map<WorkshopQuestion, WorkshopAnswer> known = new HashMap<>();

    WorkshopAnswer to(WorkshopQuestion question) {
        return known.computeIfAbsent(question, WorkshopBelief::of);
    }
}
