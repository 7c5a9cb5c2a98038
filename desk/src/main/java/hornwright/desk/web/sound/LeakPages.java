package hornwright.desk.web.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.Symptom;
import hornwright.desk.use.RecordPlayTest;
import hornwright.desk.use.RecordPlayTest.Heard;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Leaks told from how notes answer, and what has changed since the horn came. */
public final class LeakPages {
    private final Desk desk;

    public LeakPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/sound/leak", this::show);
        routes.post("/horn/{id}/sound/answers", this::say);
        routes.get("/horn/{id}/sound/before", this::before);
    }

    private void show(Context context) {
        OnBench bench = desk.bench(context);
        desk.answer(
                context,
                "leak",
                new LeakRows(bench, desk.ears(), rules())
                        .page(
                                desk.frame(context, bench, "Where it leaks", "sound/leak"),
                                Desk::fresh,
                                LeakRows.Asked.of(bench, context.queryParam("cup"), context.queryParam("mm"))));
    }

    private void say(Context context) {
        OnBench bench = desk.bench(context);
        List<String> stuffy = context.formParams("stuffy");
        List<String> fails = context.formParams("fails");
        Map<String, Symptom> answers = new LinkedHashMap<>();
        for (Fingering note : LeakRows.notes(bench)) {
            answers.put(
                    note.id(),
                    fails.contains(note.id())
                            ? Symptom.FAILS
                            : stuffy.contains(note.id()) ? Symptom.STUFFY : Symptom.SPEAKS);
        }
        Conditions conditions = bench.job().playTests().isEmpty()
                ? new Conditions("", "", null, null, 440)
                : bench.job().playTests().getLast().conditions();
        Desk.kept(new RecordPlayTest(desk.shop())
                .record(
                        bench.id(),
                        Desk.form(context),
                        new Heard(conditions, HeardBy.TYPED, List.of(), List.of(), answers, null)));
        Back.to(context, bench.address("sound/leak"));
    }

    private void before(Context context) {
        OnBench bench = desk.bench(context);
        desk.answer(
                context,
                "before",
                new BeforeRows(
                                bench,
                                desk.ears().compare(bench.job(), bench.keywork(), bench.plan()),
                                rules().value(SoundRows.bandRule()))
                        .page(desk.frame(context, bench, "Before and now", "sound/before")));
    }

    private ShopRules rules() {
        return desk.shop().house().state().rules();
    }
}
