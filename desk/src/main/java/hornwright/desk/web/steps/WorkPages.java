package hornwright.desk.web.steps;

import hornwright.bench.job.Posted;
import hornwright.bench.job.StageReached;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.steps.Step;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.use.Decide;
import hornwright.desk.use.ReachStage;
import hornwright.desk.use.RecordWork;
import hornwright.desk.use.Regulate;
import hornwright.desk.use.Saved;
import hornwright.desk.use.TurnClock;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The order of work: what is done is said here, and what must be looked at again shows at once. */
public final class WorkPages {
    private final Desk desk;

    public WorkPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/work", this::show);
        routes.post("/horn/{id}/work", this::record);
        routes.post("/horn/{id}/stage", this::reach);
        routes.post("/horn/{id}/use", this::agree);
        routes.post("/horn/{id}/clock", this::clock);
        routes.get("/horn/{id}/trays", this::trays);
    }

    private void show(Context context) {
        OnBench bench = desk.bench(context);
        Optional<Posted> kept = kept(context, bench);
        desk.answer(
                context,
                "work",
                new WorkRows(bench, desk.plans().inputs(bench.job()), Desk::fresh, Instant.now())
                        .page(
                                desk.frame(context, bench, "Work", "work"),
                                kept.map(posted -> "saved " + Clocks.time(posted.at()))
                                        .orElse(""),
                                kept.map(posted -> voided(posted, bench)).orElse("")));
    }

    private void record(Context context) {
        OnBench bench = desk.bench(context);
        Step step = step(bench, Desk.field(context, "step"));
        Optional<Decision.Contact> contact = desk.later().settledContacts(bench.job()).stream()
                .filter(one -> one.link().id().equals(step.of()))
                .map(SettledContact::decision)
                .findFirst();
        if (contact.isPresent() && Desk.field(context, "act").equals("done")) {
            Desk.kept(new Regulate(desk.shop()).done(bench.id(), Desk.form(context), contact.get()));
            Back.to(context, bench.address("work") + "#step-" + step.id());
            return;
        }
        Saved.Kept kept = Desk.kept(new RecordWork(desk.shop())
                .record(bench.id(), Desk.form(context), kind(Desk.field(context, "act"), step), of(context, step)));
        Back.to(context, bench.address("work") + "?saved=" + kept.seq() + "#step-" + step.id());
    }

    private void reach(Context context) {
        OnBench bench = desk.bench(context);
        Stage stage = chosen(Stage.class, Desk.field(context, "stage"), "Say how far the work has come.");
        Saved.Kept kept = Desk.kept(new ReachStage(desk.shop()).reach(bench.id(), Desk.form(context), stage));
        Back.to(context, bench.address("work") + "?saved=" + kept.seq());
    }

    private void agree(Context context) {
        OnBench bench = desk.bench(context);
        AgreedUse use = chosen(AgreedUse.class, Desk.field(context, "use"), "Say what the horn is for.");
        Desk.kept(new Decide(desk.shop())
                .decide(bench.id(), Desk.form(context), new Decision.Use(use, "agreed with the owner")));
        Back.to(context, bench.address("work"));
    }

    private void clock(Context context) {
        OnBench bench = desk.bench(context);
        Stage stage = chosen(Stage.class, Desk.field(context, "stage"), "Say which stage the clock is for.");
        TurnClock clock = new TurnClock(desk.shop());
        Desk.kept(
                Desk.field(context, "act").equals("start")
                        ? clock.start(bench.id(), Desk.form(context), stage)
                        : clock.stop(bench.id(), Desk.form(context), Instant.now()));
        Back.to(context, bench.address("work"));
    }

    private void trays(Context context) {
        OnBench bench = desk.bench(context);
        desk.answer(
                context,
                "trays",
                TrayRows.of(
                        bench,
                        desk.frame(context, bench, "Off and on", "trays"),
                        Objects.requireNonNullElse(context.queryParam("key"), "")));
    }

    private static <E extends Enum<E>> E chosen(Class<E> type, String word, String otherwise) {
        return Stream.of(type.getEnumConstants())
                .filter(value -> value.name().equals(word))
                .findFirst()
                .orElseThrow(() -> new Refusal(422, otherwise));
    }

    private static Step step(OnBench bench, String id) {
        return bench.plan().order().stream()
                .map(PlannedStep::step)
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("This horn has no step \"%s\".".formatted(id)));
    }

    private static WorkKind kind(String act, Step step) {
        return switch (act) {
            case "done" -> WorkKind.SIGNED_OFF;
            case "right" -> WorkKind.FOUND_RIGHT;
            case "changed" -> disturbing(step);
            default -> throw new Refusal(422, "Say whether the step is done, found right, or changed since.");
        };
    }

    /** What changing the result of a step is called; a step of the whole horn is simply done again. */
    private static WorkKind disturbing(Step step) {
        return switch (step.id().replaceFirst("\\..*", "")) {
            case "arm" -> WorkKind.ARM_BENT;
            case "cup" -> WorkKind.CUP_LEVELLED;
            case "level" -> WorkKind.HOLE_LEVELLED;
            case "fit" -> WorkKind.KEY_FITTED;
            case "regulate" -> WorkKind.LINK_CHANGED;
            case "spring" -> WorkKind.SPRING_CHANGED;
            default -> WorkKind.SIGNED_OFF;
        };
    }

    private static String of(Context context, Step step) {
        boolean changed = Desk.field(context, "act").equals("changed") && disturbing(step) != WorkKind.SIGNED_OFF;
        return changed ? step.id().replaceFirst("^[a-z]+\\.", "") : step.id();
    }

    /** The edit a browser was sent back with, if there is one. */
    private static Optional<Posted> kept(Context context, OnBench bench) {
        String seq = context.queryParam("saved");
        boolean known = seq != null
                && seq.matches("[1-9]\\d{0,8}")
                && Long.parseLong(seq) <= bench.history().seq();
        return known ? Optional.of(bench.history().edits().get(Integer.parseInt(seq) - 1)) : Optional.empty();
    }

    /** What no longer counts since a stage was said; empty when something else was. */
    private String voided(Posted posted, OnBench bench) {
        return posted.edit() instanceof StageReached reached
                ? bench.history()
                        .stateAt(posted.seq() - 1)
                        .map(before -> LapseRows.said(desk.plans().inputs(before), reached.stage()))
                        .orElse("")
                : "";
    }
}
