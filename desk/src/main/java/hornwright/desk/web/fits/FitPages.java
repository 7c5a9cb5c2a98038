package hornwright.desk.web.fits;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.FitKind;
import hornwright.bench.archive.Fitting;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Stance;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.use.GrowArchive;
import hornwright.desk.use.Keyworks;
import hornwright.desk.web.archive.ArchiveRows;
import hornwright.desk.web.archive.MeansChoice;
import hornwright.desk.web.archive.WitnessPages;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.FitRows;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What fits what: claims on parts that can be had, graded like everything else in the archive. */
public final class FitPages {
    private final Desk desk;

    public FitPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/archive/fits", context -> show(context, List.of()));
        routes.post("/archive/fits", this::add);
    }

    private Archive archive() {
        return desk.shop().archive().state().byMaker().values().stream()
                .findFirst()
                .orElseGet(() -> Archive.empty(pattern().maker()));
    }

    private static Keywork pattern() {
        return Keyworks.ofVoice(Voice.ALTO).orElseThrow(() -> Refusal.notFound("No pattern of an alto is at hand."));
    }

    private void show(Context context, List<String> faults) {
        if (!faults.isEmpty()) {
            context.status(422);
        }
        Archive archive = archive();
        FitRows rows = new FitRows(archive);
        String lead = archive.fittings().isEmpty()
                ? "Nobody has said yet what fits. A part that was tried and went in is worth a line."
                : "What was tried, measured or written about parts that can still be had. A part shown here is offered wherever such a one is missing.";
        desk.answer(
                context,
                "fits",
                new FitsPage(
                        desk.frame(context, "What fits"),
                        lead,
                        rows.axis(),
                        rows.all(),
                        form(context),
                        faults,
                        desk.shop().archive().seq(),
                        Desk.fresh()));
    }

    private static FitsPage.Form form(Context context) {
        String means = Desk.field(context, "means");
        List<String> chosen = context.formParams("places");
        return new FitsPage.Form(
                WitnessPages.words(
                        FitKind.values(), Choices.of(FitKind.class, Desk.field(context, "kind"), FitKind.PAD)),
                WitnessPages.voices(Choices.of(Voice.class, Desk.field(context, "voice"), Voice.ALTO)),
                strokes(chosen),
                List.of(
                        new PlacePanel.Option(Stance.SUPPORTS.name(), "fits", true),
                        new PlacePanel.Option(
                                Stance.CONTRADICTS.name(),
                                "does not fit",
                                Desk.field(context, "stance").equals(Stance.CONTRADICTS.name()))),
                Stream.of(MeansChoice.values())
                        .map(one -> new PlacePanel.Option(
                                one.name(), one.label(), one.name().equals(means)))
                        .toList(),
                WitnessPages.words(Hand.values(), Choices.of(Hand.class, Desk.field(context, "hand"), Hand.FIRST)),
                WitnessPages.words(
                        Bearing.values(), Choices.of(Bearing.class, Desk.field(context, "bearing"), Bearing.DIRECT)),
                WitnessPages.words(
                        Interest.values(),
                        Choices.of(Interest.class, Desk.field(context, "interest"), Interest.NEUTRAL)),
                Desk.field(context, "part"),
                Desk.field(context, "size"),
                Desk.field(context, "from"),
                Desk.field(context, "to"),
                Desk.field(context, "origin"),
                Desk.field(context, "citation"),
                Desk.field(context, "file"),
                Desk.field(context, "where"),
                Desk.field(context, "terms"),
                Desk.field(context, "when"));
    }

    /** Only groups of places where a part of these kinds goes. */
    private static List<PlacePanel.Option> strokes(List<String> chosen) {
        return ArchiveRows.strokes(pattern()).stream()
                .filter(one -> Stream.of(FitKind.values()).anyMatch(kind -> FitRows.goesTo(kind, one.word())))
                .map(one -> new PlacePanel.Option(one.word(), one.label(), chosen.contains(one.word())))
                .toList();
    }

    private void add(Context context) {
        FitForm form = new FitForm(context, desk.shop());
        Optional<Fitting> fitting = form.fitting("fits-"
                + Desk.form(context).key().replaceAll("[^A-Za-z0-9]", "").toLowerCase(java.util.Locale.ROOT));
        if (fitting.isEmpty()) {
            show(context, form.faults());
            return;
        }
        try {
            Desk.kept(new GrowArchive(desk.shop())
                    .fit(Desk.form(context), archive().maker(), fitting.get()));
            Back.to(context, "/archive/fits");
        } catch (BadInput bad) {
            show(
                    context,
                    bad.faults().stream().map(Fault::what).map(OnBench::capital).toList());
        }
    }
}
