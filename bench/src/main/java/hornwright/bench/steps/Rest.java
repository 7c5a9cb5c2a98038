package hornwright.bench.steps;

import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The rest between regulating and the second round: pads, cork and felt give a little in the first days, so what was right
 * is felt again (bench judgement).
 *
 * @param begun when the last step before it was signed off
 * @param earliest from when the second round makes sense
 * @param latest until when it should be done
 */
public record Rest(Instant begun, Instant earliest, Instant latest) {
    private static final String LAST_BEFORE = "touch";

    /**
     * The rest as the work stands; empty while the last step before it is not done, and once it is over.
     *
     * @param states of all steps, by id
     */
    public static Optional<Rest> of(Map<String, StepState> states, List<WorkDone> done, Duration least, Duration most) {
        boolean begun = states.get(LAST_BEFORE) instanceof StepState.Good;
        boolean over = states.get("rest") instanceof StepState.Good;
        if (!begun || over) {
            return Optional.empty();
        }
        return done.stream()
                .filter(work -> work.kind() == WorkKind.SIGNED_OFF || work.kind() == WorkKind.FOUND_RIGHT)
                .filter(work -> work.of().equals(LAST_BEFORE))
                .flatMap(work -> Optional.ofNullable(work.when()).stream())
                .max(Instant::compareTo)
                .map(at -> new Rest(at, at.plus(least), at.plus(most)));
    }

    public boolean tooEarly(Instant now) {
        return now.isBefore(earliest);
    }

    public boolean overdue(Instant now) {
        return now.isAfter(latest);
    }
}
