package hornwright.desk.web.horn;

import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Originality;
import hornwright.desk.units.Typed;
import hornwright.desk.use.Decide;
import hornwright.desk.use.RecordFindings;
import hornwright.desk.use.WriteNote;
import hornwright.desk.web.feel.PadClassForm;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;

/** One place: its panel, and what a person says of it. */
public final class PlacePages {
    private static final int LONGEST_NOTE = 2000;
    private static final int LONGEST_WORD = 80;

    private final Desk desk;

    public PlacePages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/place/{place}", this::panel);
        routes.post("/horn/{id}/place/{place}/found", this::found);
        routes.post("/horn/{id}/place/{place}/note", this::note);
        routes.post("/horn/{id}/place/{place}/thickness", this::thickness);
        routes.post("/horn/{id}/place/{place}/pad-class", this::padClass);
    }

    private void panel(Context context) {
        OnBench bench = desk.bench(context);
        Place place = place(context, bench);
        if (Live.asked(context)) {
            answer(context, bench, place, "", "");
        } else {
            context.redirect(bench.placeAddress(place.id()), HttpStatus.SEE_OTHER);
        }
    }

    private void found(Context context) {
        OnBench bench = desk.bench(context);
        Place place = place(context, bench);
        String typed = Desk.field(context, "thickness");
        String other = Desk.field(context, "other");
        String material = other.isEmpty() ? Desk.field(context, "material") : other;
        Typed thickness =
                typed.isEmpty() ? new Typed.Amount(java.math.BigDecimal.ZERO, "") : Units.length(context, typed);
        if (thickness instanceof Typed.Unclear unclear) {
            refused(context, bench, place, typed, unclear.sentence());
        } else if (material.length() > LONGEST_WORD) {
            refused(context, bench, place, typed, "A material is a word or two, at most 80 letters.");
        } else {
            Finding finding = new Finding(
                    place.id(),
                    material.isEmpty() ? null : material,
                    Units.millimetres(thickness),
                    null,
                    Choices.of(Condition.class, Desk.field(context, "condition"), Condition.UNKNOWN),
                    Choices.of(Originality.class, Desk.field(context, "origin"), Originality.UNKNOWN),
                    null,
                    null);
            Desk.kept(new RecordFindings(desk.shop())
                    .record(bench.id(), Desk.form(context), List.of(finding), List.of()));
            shown(context, bench, place);
        }
    }

    private void note(Context context) {
        OnBench bench = desk.bench(context);
        Place place = place(context, bench);
        String text = Desk.field(context, "note");
        if (text.length() > LONGEST_NOTE) {
            throw new Refusal(422, "A note holds 2,000 letters; this one is longer.");
        }
        Desk.kept(new WriteNote(desk.shop()).write(bench.id(), Desk.form(context), place.id(), text));
        shown(context, bench, place);
    }

    /** Takes one of the offered pad thicknesses; empty lets the plan propose again. */
    private void thickness(Context context) {
        OnBench bench = desk.bench(context);
        Place place = place(context, bench);
        if (!(place.belongsTo() instanceof Owner.OfCup cup)) {
            throw new Refusal(422, "Only a pad has a thickness to choose from the shelf.");
        }
        String chosen = Desk.field(context, "thickness");
        if (chosen.isEmpty()) {
            Desk.kept(new Decide(desk.shop()).takeBack(bench.id(), Desk.form(context), "pad-thickness." + cup.id()));
        } else if (Units.length(context, chosen) instanceof Typed.Amount amount) {
            Desk.kept(new Decide(desk.shop())
                    .decide(
                            bench.id(),
                            Desk.form(context),
                            new Decision.PadThickness(cup.id(), amount.value().doubleValue(), "chosen at the bench")));
        } else {
            throw new Refusal(422, "Choose one of the thicknesses on the shelf.");
        }
        shown(context, bench, place);
    }

    /** The class of this pad alone. */
    private void padClass(Context context) {
        OnBench bench = desk.bench(context);
        Place place = place(context, bench);
        if (!(place.belongsTo() instanceof Owner.OfCup cup)) {
            throw new Refusal(422, "Only a pad has a class.");
        }
        new PadClassForm(desk).settle(context, bench, cup.id());
        shown(context, bench, place);
    }

    private void refused(Context context, OnBench bench, Place place, String typed, String fault) {
        context.status(422);
        answer(context, bench, place, typed, fault);
    }

    private void shown(Context context, OnBench bench, Place place) {
        if (Live.asked(context)) {
            answer(context, desk.bench(bench.id()), place, "", "");
        } else {
            Back.to(context, bench.placeAddress(place.id()) + "#place");
        }
    }

    private void answer(Context context, OnBench bench, Place place, String typed, String fault) {
        PlacePanel panel = new PanelRows(desk.closing(bench, place)).of(place, typed, fault, Desk.fresh());
        if (Live.asked(context)) {
            desk.answer(context, "place", panel);
        } else {
            throw new Refusal(422, fault);
        }
    }

    private static Place place(Context context, OnBench bench) {
        String id = context.pathParam("place");
        return bench.keywork()
                .places()
                .find(id)
                .orElseThrow(() -> Refusal.notFound("This horn has no place \"%s\".".formatted(id)));
    }
}
