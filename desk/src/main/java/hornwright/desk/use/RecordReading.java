package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.bench.job.ReadingTaken;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Subject;
import hornwright.bench.survey.Unit;
import hornwright.desk.json.Faults;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Writes down one measurement. */
public record RecordReading(Shop shop) {
    /**
     * A reading as a form gives it.
     *
     * @param instrument empty for the usual one
     * @param raw exactly what was typed
     * @param when null for now
     * @param stage null for the stage the job had reached when the form was opened
     * @param series null unless it repeats others
     */
    public record Typed(
            ReadingKind kind,
            String of,
            String point,
            Observed observed,
            String instrument,
            String raw,
            @Nullable Instant when,
            @Nullable Stage stage,
            @Nullable String series) {
        public static Typed of(ReadingKind kind, String of, String point, Observed observed, String raw) {
            return new Typed(kind, of, point, observed, "", raw, null, null, null);
        }

        /** The same read with another instrument than the usual one. */
        public Typed with(String other) {
            return new Typed(kind, of, point, observed, other, raw, when, stage, series);
        }
    }

    public Saved record(String jobId, Form form, Typed typed) {
        Job seen = shop.opened(jobId).stateAt(form.expectedSeq()).orElseGet(() -> shop.jobNow(jobId));
        check(Keyworks.of(seen), typed);
        return shop.saveJob(jobId, form, new ReadingTaken(reading(FreshId.of("r", form), seen, typed)));
    }

    private static Reading reading(String id, Job seen, Typed typed) {
        return new Reading(
                id,
                typed.kind(),
                typed.of(),
                typed.point(),
                typed.observed(),
                typed.instrument().isEmpty() ? typed.kind().usualInstrument() : typed.instrument(),
                typed.raw(),
                "",
                typed.when(),
                typed.stage() == null ? seen.stage() : typed.stage(),
                typed.series());
    }

    private static void check(Keywork keywork, Typed typed) {
        Faults faults = new Faults();
        ReadingKind kind = typed.kind();
        if (!kind.says().isInstance(typed.observed())) {
            faults.add("/observed", "this is not what a " + kind.word() + " says", example(kind));
        } else if (typed.observed() instanceof Observed.Amount amount && amount.unit() != kind.unit()) {
            faults.add(
                    "/observed",
                    "a " + kind.word() + " is not in " + amount.unit().symbol(),
                    example(kind));
        }
        if (!hasSubject(keywork, kind.subject(), typed.of())) {
            faults.add(
                    "/of",
                    "this horn has no %s \"%s\""
                            .formatted(kind.subject().name().toLowerCase(java.util.Locale.ROOT), typed.of()),
                    "\"of\": \"" + someSubject(keywork, kind.subject()) + "\"");
        }
        faults.refuseIfAny();
    }

    private static boolean hasSubject(Keywork keywork, Subject subject, String id) {
        return switch (subject) {
            case CUP -> keywork.cups().contains(id);
            case HOLE -> keywork.holes().contains(id);
            case KEY -> keywork.keys().contains(id);
            case LINK -> keywork.links().contains(id);
            case PLACE -> keywork.places().contains(id);
            case HORN -> true;
        };
    }

    private static String someSubject(Keywork keywork, Subject subject) {
        return switch (subject) {
            case CUP -> keywork.cups().list().getFirst().id();
            case HOLE -> keywork.holes().list().getFirst().id();
            case KEY -> keywork.keys().list().getFirst().id();
            case LINK -> keywork.links().list().getFirst().id();
            case PLACE -> keywork.places().list().getFirst().id();
            case HORN -> "horn";
        };
    }

    private static String example(ReadingKind kind) {
        Unit unit = kind.unit();
        return unit == null ? "one of its words" : "4.35 " + unit.symbol();
    }
}
