package hornwright.desk.jobfile;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.CutLine;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.Removal;
import hornwright.bench.plan.Warning;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.steps.StepState;
import hornwright.desk.json.Out;
import java.util.List;
import java.util.stream.Stream;

/** A plan as plan.json. */
public final class PlanJson {
    private final Plan plan;
    private final NumberJson numbers;

    private PlanJson(Plan plan) {
        this.plan = plan;
        this.numbers = new NumberJson(plan.becauses());
    }

    public static Out write(JobRequest job, Plan plan, String engineVersion) {
        return new PlanJson(plan).write(job, engineVersion);
    }

    private Out write(JobRequest job, String engineVersion) {
        PlaceOut places = new PlaceOut(numbers);
        Out out = Out.object().put("engine_version", engineVersion);
        out.node().set("inputs", job.asRead());
        return out.put(
                        "places",
                        job.inputs().keywork().places().stream()
                                .map(place -> places.write(place, plan.place(place.id())))
                                .toList())
                .put("missing", plan.missing().stream().map(PlanJson::missing).toList())
                .putTexts(
                        "order",
                        plan.order().stream().map(step -> step.step().id()).toList())
                .put("steps", plan.order().stream().map(PlanJson::step).toList())
                .put("removal", plan.removal().stream().map(PlanJson::removal).toList())
                .put("orders", plan.orders().stream().map(PlanJson::order).toList())
                .put("cuts", plan.cuts().stream().map(this::cut).toList())
                .put("warnings", plan.warnings().stream().map(PlanJson::warning).toList())
                .put(
                        "stale",
                        plan.stale().stream()
                                .map(stale -> Out.object()
                                        .put("reading", stale.reading())
                                        .put("why", stale.why()))
                                .toList())
                .put("money", money())
                .put("links", links(job))
                .put("becauses", numbers.table());
    }

    /** Those the bench sets in its order, then the others. */
    private List<Out> links(JobRequest job) {
        LinkOut one = new LinkOut(plan, SettledContact.of(job.inputs()), numbers);
        ById<Link> all = job.inputs().keywork().links();
        return Stream.concat(
                        plan.links().stream().map(link -> all.get(link.link())),
                        all.stream().filter(link -> plan.link(link.id()).isEmpty()))
                .map(one::write)
                .toList();
    }

    private static Out missing(Missing missing) {
        return Out.object()
                .put("measure", missing.measure())
                .putTexts("decides", missing.decides())
                .put("kind", missing.kind() == null ? null : missing.kind().word())
                .put("of", missing.of())
                .put("seconds", missing.seconds())
                .put("perishable", missing.perishable());
    }

    private static Out step(PlannedStep planned) {
        Out out = Out.object()
                .put("id", planned.step().id())
                .put("stage", planned.step().stage().word())
                .put("words", planned.step().words())
                .put("of", planned.step().of());
        return switch (planned.state()) {
            case StepState.Waiting waiting -> out.put("state", "waiting").putNull("why");
            case StepState.Ready ready -> out.put("state", "ready").putNull("why");
            case StepState.Good good -> out.put("state", "good").putNull("why");
            case StepState.Recheck recheck -> out.put("state", "recheck").put("why", recheck.why());
        };
    }

    private static Out removal(Removal removal) {
        return Out.object()
                .put("turn", removal.turn())
                .put("rod", removal.rod())
                .putTexts("keys", removal.keys())
                .putTexts("after", removal.after())
                .put("words", removal.words());
    }

    private static Out order(OrderLine line) {
        return Out.object()
                .put("kind", line.kind().word())
                .put("material", line.material())
                .put("diameter_mm", line.diameterMm())
                .put("thickness_mm", line.thicknessMm())
                .put("thickness", line.thicknessWords())
                .put("centre", line.centre())
                .put("padClass", line.padClass().isEmpty() ? null : line.padClass())
                .put("need", line.need())
                .put("spares", line.spares())
                .put("onShelf", line.onShelf())
                .put("toOrder", line.toOrder())
                .put("provisional", line.provisional())
                .putTexts("places", line.places());
    }

    private Out cut(CutLine line) {
        return Out.object()
                .put("place", line.place())
                .put("material", line.material())
                .put("form", line.form().word())
                .put("cut", numbers.write(line.cutMm()))
                .put("sheet", numbers.write(line.sheetMm()))
                .put("finish", numbers.write(line.finishMm()))
                .put("method", line.method());
    }

    private static Out warning(Warning warning) {
        return Out.object()
                .put("sort", warning.sort().word())
                .put("words", warning.words())
                .putTexts("about", warning.about());
    }

    private Out money() {
        return Out.object()
                .put("currency", plan.money().currency())
                .put("hours", numbers.write(plan.money().hours()))
                .put("parts", numbers.write(plan.money().parts()))
                .put("cost", numbers.write(plan.money().cost()))
                .put(
                        "lines",
                        plan.money().lines().stream()
                                .map(line -> Out.object()
                                        .put("stage", line.stage())
                                        .put("words", line.words())
                                        .put("hours", numbers.write(line.hours())))
                                .toList());
    }
}
