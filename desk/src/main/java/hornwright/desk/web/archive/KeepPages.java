package hornwright.desk.web.archive;

import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Treatment;
import hornwright.desk.use.Decide;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Keep or replace: the proposal, the restorer's decision and why. */
public final class KeepPages {
    private static final int LONGEST = 500;

    private final Desk desk;

    public KeepPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/keep", context -> show(context, List.of()));
        routes.post("/horn/{id}/keep", this::decide);
        routes.post("/horn/{id}/keep/back", this::takeBack);
    }

    private void show(Context context, List<String> faults) {
        OnBench bench = desk.bench(context);
        if (!faults.isEmpty()) {
            context.status(422);
        }
        String at = Objects.requireNonNullElse(context.queryParam("saved"), "");
        KeepRows rows = new KeepRows(bench);
        desk.answer(
                context,
                "keep",
                new KeepPage(
                        desk.frame(context, bench, "Keep or replace", "keep"),
                        Next.of(bench),
                        bench.id(),
                        rows.lead(),
                        desk.missing(bench),
                        rows.sets(),
                        rows.parts(),
                        KeepRows.treatments(),
                        faults,
                        at.matches("\\d\\d:\\d\\d:\\d\\d") ? "saved " + at : "",
                        bench.history().seq(),
                        Desk.fresh()));
    }

    private static List<String> places(Context context, OnBench bench) {
        return Stream.concat(
                        context.formParams("place").stream(),
                        Stream.of(Desk.field(context, "places").split(",")))
                .filter(bench.keywork().places()::contains)
                .distinct()
                .toList();
    }

    private void decide(Context context) {
        OnBench bench = desk.bench(context);
        List<String> faults = new ArrayList<>();
        List<String> places = places(context, bench);
        String why = Desk.field(context, "why");
        String material = Desk.field(context, "material");
        Treatment treatment = Choices.of(Treatment.class, Desk.field(context, "treatment"), Treatment.DECIDE);
        if (places.isEmpty()) {
            faults.add("Tick at least one place.");
        }
        if (treatment == Treatment.DECIDE) {
            faults.add("Choose what is to be done.");
        }
        if (why.isEmpty() || why.length() > LONGEST) {
            faults.add("Say why, in at most 500 letters: whoever opens this horn next will want to know.");
        }
        if (material.length() > 80) {
            faults.add("A material is a word or two, at most 80 letters.");
        }
        if (!faults.isEmpty()) {
            show(context, faults);
            return;
        }
        List<Decision> decisions = new ArrayList<>();
        places.forEach(
                place -> decisions.add(new Decision.Treat(place, treatment, WitnessForm.emptyIsNull(material), why)));
        saved(context, bench, new Decide(desk.shop()).decide(bench.id(), Desk.form(context), decisions));
    }

    private void takeBack(Context context) {
        OnBench bench = desk.bench(context);
        List<String> about =
                places(context, bench).stream().map(place -> "treat." + place).toList();
        if (about.isEmpty()) {
            show(context, List.of("Tick at least one place."));
            return;
        }
        saved(context, bench, new Decide(desk.shop()).takeBack(bench.id(), Desk.form(context), about));
    }

    private static void saved(Context context, OnBench bench, Saved saved) {
        Back.to(
                context,
                bench.address("keep") + "?saved=" + Clocks.time(Desk.kept(saved).at()));
    }
}
