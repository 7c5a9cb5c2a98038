package hornwright.desk.web.sound;

import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundAnswer.ChangeLine;
import hornwright.bench.sound.SoundAnswer.Moved;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.Decision;
import hornwright.desk.use.Decide;
import hornwright.desk.use.RecordPlayTest;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Play, look, decide: a play test is taken here, and a height that is offered is accepted or left. */
public final class SoundPages {
    private final Desk desk;

    public SoundPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/sound", context -> show(context, desk.bench(context), List.of(), Map.of()));
        routes.post("/horn/{id}/sound/test", this::take);
        routes.post("/horn/{id}/sound/withdraw", this::withdraw);
        routes.post("/horn/{id}/sound/accept", this::accept);
        routes.post("/horn/{id}/sound/back", this::takeBack);
    }

    private void show(Context context, OnBench bench, List<String> troubles, Map<String, String> typed) {
        desk.answer(
                context,
                "sound",
                new SoundRows(
                                bench,
                                desk.sound(bench, chosen(context, bench)),
                                chosen(context, bench),
                                desk.shop().house().state().rules(),
                                Desk::fresh)
                        .page(desk.frame(context, bench, "Sound", "sound"), desk.scripts(), troubles, typed));
    }

    /** Notes the person wants nearer, from the address or the form; what this horn has not is ignored. */
    private static Set<String> chosen(Context context, OnBench bench) {
        Set<String> chosen = new TreeSet<>(context.queryParams("note"));
        chosen.addAll(context.formParams("note"));
        chosen.removeIf(note -> !bench.keywork().fingerings().contains(note));
        return chosen;
    }

    private void take(Context context) {
        OnBench bench = desk.bench(context);
        PlayForm form = new PlayForm(context, bench.keywork());
        form.heard()
                .ifPresentOrElse(
                        heard -> {
                            Desk.kept(new RecordPlayTest(desk.shop()).record(bench.id(), Desk.form(context), heard));
                            Back.to(context, bench.address("sound"));
                        },
                        () -> {
                            context.status(422);
                            show(context, bench, form.troubles(), form.fields());
                        });
    }

    private void withdraw(Context context) {
        OnBench bench = desk.bench(context);
        String test = Desk.field(context, "test");
        if (bench.job().playTests().stream().noneMatch(one -> one.id().equals(test))) {
            throw Refusal.notFound("This horn has no play test \"%s\".".formatted(test));
        }
        Desk.kept(new RecordPlayTest(desk.shop())
                .withdraw(bench.id(), Desk.form(context), test, "not to count, said on the page"));
        Back.to(context, bench.address("sound"));
    }

    /** What is accepted must be what is offered now; the form only says which line was meant. */
    private void accept(Context context) {
        OnBench bench = desk.bench(context);
        SoundAnswer answer = desk.sound(bench, chosen(context, bench));
        ChangeLine line = answer.offered().stream()
                .filter(one -> one.cup().id().equals(Desk.field(context, "cup"))
                        && Written.plain(one.to().value()).equals(Desk.field(context, "mm")))
                .findFirst()
                .orElseThrow(() -> new Refusal(409, "This height is not offered any more; look at the page again."));
        double mm = Math.round(line.to().value() * 100) / 100.0;
        Decision.Height height = new Decision.Height(line.cup().id(), mm, why(line));
        Desk.kept(new Decide(desk.shop()).decide(bench.id(), Desk.form(context), height));
        Back.to(context, bench.address("sound") + "#offer");
    }

    private static String why(ChangeLine line) {
        List<String> notes = line.moved().stream()
                .sorted(java.util.Comparator.comparingDouble(
                        moved -> -Math.abs(moved.cents().value())))
                .limit(3)
                .map(Moved::fingering)
                .map(WrittenNote::shown)
                .toList();
        return "accepted on %s, for %s".formatted(Clocks.day(Instant.now()), String.join(", ", notes));
    }

    private void takeBack(Context context) {
        OnBench bench = desk.bench(context);
        String about = "height." + Desk.field(context, "cup");
        if (!bench.job().decisions().containsKey(about)) {
            throw Refusal.notFound("No height was accepted there.");
        }
        Desk.kept(new Decide(desk.shop()).takeBack(bench.id(), Desk.form(context), about));
        Back.to(context, bench.address("sound") + "#offer");
    }
}
