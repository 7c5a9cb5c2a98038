package hornwright.bench.plan.measured;

import hornwright.bench.horn.Keywork;
import hornwright.bench.regulation.Watch;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkKind;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What voids a gap felt under a linked cup: it hangs on everything its finger works through, so work on any of those keys
 * and contacts ends it, and so does every stage that moves a landing (bench judgement).
 */
final class LinkedFreshness {
    private static final Set<ReadingKind> LINKED = EnumSet.of(ReadingKind.LINKED_GAP, ReadingKind.CONTACT_GAP);
    private static final Set<Stage> STAGES = EnumSet.of(
            Stage.BODY_STRAIGHT,
            Stage.KEYS_FITTED,
            Stage.HOLES_LEVEL,
            Stage.CUPS_LEVEL,
            Stage.CORKED,
            Stage.PADDED,
            Stage.REGULATED);
    private static final Set<WorkKind> WORK = EnumSet.of(
            WorkKind.ARM_BENT,
            WorkKind.CUP_LEVELLED,
            WorkKind.HOLE_LEVELLED,
            WorkKind.KEY_FITTED,
            WorkKind.LINK_CHANGED,
            WorkKind.PAD_FITTED);

    private LinkedFreshness() {}

    static boolean isLinked(ReadingKind kind) {
        return LINKED.contains(kind);
    }

    static boolean isVoidedBy(Stage stage) {
        return STAGES.contains(stage);
    }

    static boolean isVoidedBy(WorkKind work) {
        return WORK.contains(work);
    }

    /** Ids of the keys and links the finger of a reading works through. */
    static Stream<String> ways(Keywork keywork, Reading reading) {
        return Watch.ways(keywork, reading.point().replaceFirst("^pressing ", "")).stream();
    }
}
