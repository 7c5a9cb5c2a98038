package hornwright.desk.web.survey;

import hornwright.bench.horn.PlaceKind;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.GroupFinding;
import hornwright.desk.units.Typed;
import hornwright.desk.use.RecordFindings;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The survey by groups of keys: one material over all places of a kind in one stroke. */
public final class SurveyPages {
    private static final int LONGEST_WORD = 80;

    private final Desk desk;

    public SurveyPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/survey", context -> show(context, desk.bench(context), null, "", ""));
        routes.post("/horn/{id}/survey", this::paint);
    }

    private void show(Context context, OnBench bench, @Nullable String faulty, String fault, String said) {
        desk.answer(
                context,
                "survey",
                new SurveyPage(
                        desk.frame(context, bench, "Survey", "survey"),
                        Next.of(bench),
                        bench.id(),
                        bench.history().seq(),
                        new SurveyRows(bench).groups(faulty, fault),
                        desk.missing(bench),
                        said,
                        Desk.fresh()));
    }

    private void paint(Context context) {
        OnBench bench = desk.bench(context);
        String stroke = Desk.field(context, "stroke");
        String fault = fault(context);
        if (!fault.isEmpty()) {
            context.status(422);
            if (Live.asked(context)) {
                answer(context, bench, stroke, fault, "");
            } else {
                show(context, bench, stroke, fault, "");
            }
            return;
        }
        boolean others = !Desk.field(context, "others").isEmpty();
        List<GroupFinding> strokes = others ? withOthers(bench, finding(context)) : List.of(finding(context));
        Saved.Kept kept =
                Desk.kept(new RecordFindings(desk.shop()).record(bench.id(), Desk.form(context), List.of(), strokes));
        if (others && Live.asked(context)) {
            // Strokes all over the page have changed.
            context.header("HX-Refresh", "true");
        } else if (Live.asked(context)) {
            answer(context, desk.bench(bench.id()), stroke, "", "saved " + Clocks.time(kept.at()));
        } else {
            Back.to(context, bench.address("survey") + "#" + stroke);
        }
    }

    private void answer(Context context, OnBench bench, String stroke, String fault, String said) {
        SurveyPage.Stroke painted = new SurveyRows(bench)
                .groups(stroke, fault).stream()
                        .flatMap(group -> group.strokes().stream())
                        .filter(one -> one.id().equals(stroke))
                        .findFirst()
                        .orElseThrow(() -> Refusal.notFound("This horn has no such places."));
        desk.answer(
                context,
                "stroke",
                new SurveyPage.Painted(bench.id(), bench.history().seq(), painted, said, Desk.fresh()));
    }

    private static String fault(Context context) {
        String material = material(context);
        if (material.isEmpty()) {
            return "Choose what they are mostly made of, or type it.";
        }
        if (material.length() > LONGEST_WORD) {
            return "A material is a word or two, at most 80 letters.";
        }
        if (also(context).stream().anyMatch(word -> word.length() > LONGEST_WORD)) {
            return "Materials seen beside it are a word or two each, with commas between them.";
        }
        if (!Desk.field(context, "missing").matches("\\d{0,3}")) {
            return "How many are missing is a whole number like 2; leave it empty for none.";
        }
        return thickness(context) instanceof Typed.Unclear unclear ? unclear.sentence() : "";
    }

    /** The rest as this one: every group with such places that nobody has looked at. */
    private static List<GroupFinding> withOthers(OnBench bench, GroupFinding finding) {
        PlaceKind kind = Stream.of(PlaceKind.values())
                .filter(one -> one.word().equals(finding.placeKind()))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("This horn has no such places."));
        Stream<GroupFinding> rest = new SurveyRows(bench)
                .unseen(kind).stream()
                        .filter(group -> !group.equals(finding.group()))
                        .map(group -> finding.over(SurveyRows.id(group, kind), group));
        return Stream.concat(Stream.of(finding), rest).toList();
    }

    private static GroupFinding finding(Context context) {
        String missing = Desk.field(context, "missing");
        return new GroupFinding(
                Desk.field(context, "stroke"),
                Desk.field(context, "group"),
                Desk.field(context, "kind"),
                material(context),
                also(context),
                missing.isEmpty() ? 0 : Integer.parseInt(missing),
                Units.millimetres(thickness(context)),
                Choices.of(Condition.class, Desk.field(context, "condition"), Condition.UNKNOWN));
    }

    private static List<String> also(Context context) {
        return Stream.of(Desk.field(context, "also").split("[,;]", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static Typed thickness(Context context) {
        String typed = Desk.field(context, "thickness");
        return typed.isEmpty() ? new Typed.Amount(BigDecimal.ZERO, "") : Units.length(context, typed);
    }

    private static String material(Context context) {
        String other = Desk.field(context, "other");
        return other.isEmpty()
                ? Objects.requireNonNullElse(context.formParam("material"), "").strip()
                : other;
    }
}
