package hornwright.bench.plan.measured;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import java.time.Instant;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which work voids which reading (bench judgement). A stage of the order of work voids a kind of reading on the whole
 * horn but on what it left {@link Untouched untouched}; a piece of work voids readings on what it touched. The inside diameter of a cup outlives everything but work on
 * that cup.
 */
public final class Freshness {
    private static final EnumSet<ReadingKind> HEIGHTS =
            EnumSet.of(ReadingKind.FRONT_HEIGHT, ReadingKind.CENTRE_HEIGHT, ReadingKind.FOOT_CLEARANCE);
    private static final EnumSet<ReadingKind> LANDING =
            with(HEIGHTS, ReadingKind.TRIAL_PAD, ReadingKind.LINK_SPACE, ReadingKind.LEAK, ReadingKind.LEAK_SITE);
    private static final EnumSet<ReadingKind> CONTACTS =
            EnumSet.of(ReadingKind.LINK_SPACE, ReadingKind.CLEARANCE, ReadingKind.LOST_MOTION);

    private static final Map<Stage, EnumSet<ReadingKind>> BY_STAGE = Map.of(
            Stage.BODY_STRAIGHT,
                    with(LANDING, ReadingKind.RIM_GAP, ReadingKind.TUNING, ReadingKind.NECK, ReadingKind.NECK_CHECK),
            Stage.SPRINGS_SOUND, EnumSet.of(ReadingKind.TOUCH_WEIGHT),
            Stage.KEYS_FITTED,
                    with(
                            LANDING,
                            ReadingKind.PLAY,
                            ReadingKind.HINGE,
                            ReadingKind.TOUCH_WEIGHT,
                            ReadingKind.CLEARANCE,
                            ReadingKind.LOST_MOTION),
            Stage.HOLES_LEVEL, with(LANDING, ReadingKind.RIM_GAP),
            Stage.CUPS_LEVEL, LANDING,
            Stage.CORKED, with(union(HEIGHTS, CONTACTS), ReadingKind.THICKNESS),
            Stage.PADDED, with(union(HEIGHTS, CONTACTS), ReadingKind.LEAK, ReadingKind.LEAK_SITE, ReadingKind.TUNING),
            Stage.REGULATED, EnumSet.of(ReadingKind.LEAK, ReadingKind.TUNING));

    private static final Map<WorkKind, EnumSet<ReadingKind>> BY_WORK = Map.of(
            WorkKind.ARM_BENT, with(union(LANDING, CONTACTS), ReadingKind.TRIAL_SHIM),
            WorkKind.CUP_LEVELLED, with(LANDING, ReadingKind.CUP_INSIDE, ReadingKind.CUP_DEPTH),
            WorkKind.HOLE_LEVELLED, with(LANDING, ReadingKind.RIM_GAP),
            WorkKind.KEY_FITTED,
                    with(
                            LANDING,
                            ReadingKind.PLAY,
                            ReadingKind.HINGE,
                            ReadingKind.TOUCH_WEIGHT,
                            ReadingKind.CLEARANCE,
                            ReadingKind.LOST_MOTION),
            WorkKind.FOOT_CHANGED, with(union(HEIGHTS, CONTACTS), ReadingKind.THICKNESS),
            WorkKind.LINK_CHANGED, with(CONTACTS, ReadingKind.THICKNESS),
            WorkKind.PAD_FITTED, with(union(HEIGHTS, CONTACTS), ReadingKind.LEAK_SITE),
            WorkKind.SPRING_CHANGED, EnumSet.of(ReadingKind.TOUCH_WEIGHT),
            WorkKind.SIGNED_OFF, EnumSet.noneOf(ReadingKind.class));

    private final Keywork keywork;
    private final Stage now;
    private final List<WorkDone> done;
    private final Untouched untouched;

    private Freshness(Keywork keywork, Stage now, List<WorkDone> done, Untouched untouched) {
        this.keywork = keywork;
        this.now = now;
        this.done = done;
        this.untouched = untouched;
    }

    /** How the readings of these inputs go stale. */
    public static Freshness of(PlanInputs inputs) {
        return of(
                inputs.keywork(),
                inputs.stage(),
                inputs.readings(),
                inputs.workDone(),
                inputs.decisions(),
                inputs.rules());
    }

    public static Freshness of(
            Keywork keywork,
            Stage now,
            List<Reading> readings,
            List<WorkDone> done,
            List<Decision> decisions,
            ShopRules rules) {
        return new Freshness(keywork, now, done, new Untouched(keywork, readings, done, decisions, rules));
    }

    /** Why a reading no longer counts; empty while it does. */
    public Optional<String> whyStale(Reading reading) {
        Optional<Stage> stage = voidingStage(reading, now);
        if (stage.isPresent()) {
            return Optional.of("taken at " + reading.stage().word() + "; since then: "
                    + stage.get().word());
        }
        return done.stream()
                .filter(work -> later(work.when(), reading.when()) && voids(work, reading))
                .findFirst()
                .map(work -> "since then on " + work.of() + ": " + work.kind().word());
    }

    /** The first stage after that of the reading, up to {@code reached}, whose work changes what it says. */
    public Optional<Stage> voidingStage(Reading reading, Stage reached) {
        return Stream.of(Stage.values())
                .filter(stage -> stage.compareTo(reading.stage()) > 0 && stage.compareTo(reached) <= 0)
                .filter(stage -> voids(stage, reading))
                .findFirst();
    }

    private boolean voids(Stage stage, Reading reading) {
        boolean kind = LinkedFreshness.isLinked(reading.kind())
                ? LinkedFreshness.isVoidedBy(stage)
                : BY_STAGE.getOrDefault(stage, EnumSet.noneOf(ReadingKind.class))
                        .contains(reading.kind());
        return kind && !untouched.by(stage, reading);
    }

    /** Whether this work changes what a reading from before it says. */
    public boolean voids(WorkDone work, Reading reading) {
        if (LinkedFreshness.isLinked(reading.kind())) {
            return LinkedFreshness.isVoidedBy(work.kind())
                    && LinkedFreshness.ways(keywork, reading).anyMatch(touched(work)::contains);
        }
        return BY_WORK.getOrDefault(work.kind(), EnumSet.noneOf(ReadingKind.class))
                        .contains(reading.kind())
                && touched(work).contains(reading.of());
    }

    private static boolean later(
            @org.jspecify.annotations.Nullable Instant work, @org.jspecify.annotations.Nullable Instant reading) {
        return work == null || reading == null || work.isAfter(reading);
    }

    /** The ids a piece of work bears on: the cup with its hole and key, the links of that key, or the contact itself. */
    private Set<String> touched(WorkDone work) {
        String bare = work.of().replaceFirst("^(cup|foot|guard|bumper)\\.", "");
        Set<String> ids =
                new HashSet<>(List.of(work.of(), bare, "cup." + bare, "link." + bare, "foot." + bare, "guard." + bare));
        for (Cup cup : keywork.cups()) {
            if (cup.hole().equals(bare) || cup.key().equals(bare)) {
                ids.addAll(List.of(cup.id(), cup.hole(), cup.key(), "pad." + cup.hole()));
            }
        }
        for (Link link : keywork.links()) {
            if (ids.contains(link.driver()) || ids.contains(link.follower())) {
                ids.add(link.id());
            }
        }
        return ids;
    }

    private static EnumSet<ReadingKind> union(EnumSet<ReadingKind> some, EnumSet<ReadingKind> others) {
        EnumSet<ReadingKind> all = EnumSet.copyOf(some);
        all.addAll(others);
        return all;
    }

    private static EnumSet<ReadingKind> with(EnumSet<ReadingKind> kinds, ReadingKind... more) {
        EnumSet<ReadingKind> all = EnumSet.copyOf(kinds);
        all.addAll(List.of(more));
        return all;
    }
}
