package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.How;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.SerialRange;
import hornwright.bench.archive.Stance;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Voice;
import hornwright.bench.job.StreamName;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.use.GrowArchive;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.Saved;
import hornwright.desk.use.ShowArchive;
import hornwright.desk.use.ShowHistory;
import hornwright.desk.use.Undo;
import hornwright.desk.web.history.EditDays;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The archive: its horns, what they disagree on, papers and people, and where somebody looked for more. */
public final class ArchivePages {
    private static final int NEWEST = 60;
    private static final String DIGITS = "\\d{1,9}";

    private final Desk desk;

    public ArchivePages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/archive", context -> show(context, List.of()));
        routes.post("/archive/witness", this::addWitness);
        routes.post("/archive/statement", this::state);
        routes.post("/archive/search", this::search);
        routes.post("/archive/resolve", this::resolve);
        routes.post("/archive/year", this::putYear);
        routes.post("/archive/year/out", this::takeYearOut);
        routes.get("/archive/history", this::history);
        routes.post("/archive/undo", this::undo);
    }

    /** The maker whose horns the shop knows; of a shop that knows none, the one its patterns speak of. */
    private Archive archive() {
        return desk.shop().archive().state().byMaker().values().stream()
                .findFirst()
                .orElseGet(() -> Archive.empty(pattern(Voice.ALTO).maker()));
    }

    private static Keywork pattern(Voice voice) {
        return Keyworks.ofVoice(voice)
                .orElseThrow(() -> Refusal.notFound("No pattern of a %s is at hand.".formatted(voice.word())));
    }

    private void show(Context context, List<String> faults) {
        Archive archive = archive();
        ArchiveRows rows = new ArchiveRows(archive);
        if (!faults.isEmpty()) {
            context.status(422);
        }
        String at = Objects.requireNonNullElse(context.queryParam("saved"), "");
        desk.answer(
                context,
                "archive",
                new ArchivePage(
                        desk.frame(context, "The archive"),
                        rows.lead(),
                        rows.horns(),
                        rows.contests(new ShowArchive(desk.shop()).contests(archive.maker())),
                        rows.asides(),
                        rows.said(),
                        rows.searches(),
                        rows.told(),
                        new YearRows(archive.years()).years(Objects.requireNonNullElse(context.queryParam("of"), "")),
                        new WitnessPage.Facts(
                                Desk.field(context, "serial"),
                                WitnessPages.voices(Voice.ALTO),
                                Desk.field(context, "model"),
                                Desk.field(context, "built"),
                                WitnessPages.words(Integrity.values(), Integrity.UNKNOWN),
                                Desk.field(context, "stamps")),
                        form(),
                        faults,
                        at.matches("\\d\\d:\\d\\d:\\d\\d") ? "saved " + at : "",
                        desk.shop().archive().seq(),
                        Desk.fresh()));
    }

    private static ArchivePage.Form form() {
        return new ArchivePage.Form(
                MeansChoice.ofMany().stream()
                        .map(one -> new PlacePanel.Option(one.name(), one.label(), false))
                        .toList(),
                WitnessPages.words(Hand.values(), Hand.FIRST),
                WitnessPages.words(Bearing.values(), Bearing.DIRECT),
                WitnessPages.words(Interest.values(), Interest.NEUTRAL),
                WitnessPages.words(Stance.values(), Stance.SUPPORTS),
                WitnessPages.voices(Voice.ALTO),
                ArchiveRows.strokes(pattern(Voice.ALTO)));
    }

    private void addWitness(Context context) {
        WitnessForm form = new WitnessForm(context);
        Archive archive = archive();
        Witness typed = form.witness("", archive.maker());
        boolean taken = archive.witnesses().stream().anyMatch(one -> one.id().equals(typed.id()));
        Witness witness = taken ? form.witness(typed.id() + "-" + typed.voice().word(), archive.maker()) : typed;
        if (archive.witnesses().stream()
                .anyMatch(one -> one.serial() == typed.serial() && one.voice() == typed.voice())) {
            form.faults()
                    .add("%s %d is in the archive already; open it and say more of it."
                            .formatted(OnBench.capital(typed.voice().word()), typed.serial()));
        }
        if (!form.faults().isEmpty()) {
            show(context, form.faults());
            return;
        }
        Desk.kept(new GrowArchive(desk.shop()).witness(Desk.form(context), witness));
        Back.to(context, "/archive/witness/" + witness.id());
    }

    private void state(Context context) {
        WitnessForm form = new WitnessForm(context, desk.shop());
        Voice voice = Choices.of(Voice.class, Desk.field(context, "voice"), Voice.ALTO);
        String origin = Desk.field(context, "origin");
        if (origin.isEmpty()) {
            form.faults().add("Name the origin, like: workshop papers. What is copied from it has the same name.");
        }
        String material = Desk.field(context, "material");
        if (material.isEmpty() || material.length() > 80) {
            form.faults().add("Say which material it speaks of, in a word or two.");
        }
        List<String> places = places(context, voice);
        if (places.isEmpty()) {
            form.faults().add("Choose which places it speaks of.");
        }
        SerialRange serials = serials(context, form.faults());
        How how = form.how(kind -> kind.word());
        @Nullable SearchLog log = how.bearing() == Bearing.NEGATIVE ? log(context, form) : null;
        if (!form.faults().isEmpty()) {
            show(context, form.faults());
            return;
        }
        Stance stance = Choices.of(Stance.class, Desk.field(context, "stance"), Stance.SUPPORTS);
        String id = "said-" + Desk.fresh().substring(0, 8);
        List<Statement> statements = places.stream()
                .map(place ->
                        new Statement(voice, place, material, evidence(id + "." + place, how, stance, serials, log)))
                .toList();
        keep(
                context,
                () -> new GrowArchive(desk.shop())
                        .state(Desk.form(context), archive().maker(), statements));
    }

    private static Evidence evidence(String id, How how, Stance stance, SerialRange serials, @Nullable SearchLog log) {
        return new Evidence(
                id,
                how.means(),
                how.hand(),
                how.bearing(),
                stance,
                how.origin(),
                how.interest(),
                Integrity.ORIGINAL,
                serials,
                how.citation(),
                how.file(),
                log);
    }

    private static SerialRange serials(Context context, List<String> faults) {
        String from = Desk.field(context, "from");
        String to = Desk.field(context, "to");
        if (!from.matches(DIGITS) || !(to.isEmpty() || to.matches(DIGITS))) {
            faults.add("Serials are digits like 38000 and 45000; the second may be left out.");
            return SerialRange.one(0);
        }
        long low = Long.parseLong(from);
        long high = to.isEmpty() ? low : Long.parseLong(to);
        if (high < low) {
            faults.add("Serials run from the lower to the higher.");
            return SerialRange.one(low);
        }
        return new SerialRange(low, high);
    }

    private static List<String> places(Context context, Voice voice) {
        Map<String, List<Place>> strokes = WitnessRows.strokes(pattern(voice));
        return context.formParams("places").stream()
                .flatMap(name -> strokes.getOrDefault(name, List.of()).stream())
                .map(Place::id)
                .toList();
    }

    /** A search that was written down; without one "nothing found" says nothing. */
    private static @Nullable SearchLog log(Context context, WitnessForm form) {
        String where = Desk.field(context, "where");
        String terms = Desk.field(context, "terms");
        @Nullable Edtf when = form.date("when");
        if (where.isEmpty() || terms.isEmpty() || when == null) {
            form.faults()
                    .add(
                            "A search says where, for what and when somebody looked: without that, not finding says nothing.");
            return null;
        }
        return new SearchLog(where, when, terms);
    }

    private void search(Context context) {
        WitnessForm form = new WitnessForm(context);
        List<String> places = places(context, Voice.ALTO);
        if (places.isEmpty()) {
            form.faults().add("Choose which places were looked for.");
        }
        @Nullable SearchLog log = log(context, form);
        if (!form.faults().isEmpty() || log == null) {
            show(context, form.faults());
            return;
        }
        keep(
                context,
                () -> new GrowArchive(desk.shop())
                        .search(Desk.form(context), archive().maker(), places, log));
    }

    private void resolve(Context context) {
        WitnessForm form = new WitnessForm(context);
        String reason = Desk.field(context, "reason");
        String who = Desk.field(context, "who");
        @Nullable Edtf when = form.date("when");
        List<String> ids = Stream.of(Desk.field(context, "evidence").split(","))
                .filter(id -> !id.isEmpty())
                .toList();
        if (reason.isEmpty() || who.isEmpty() || when == null || ids.isEmpty()) {
            form.faults().add("A contradiction is set aside in writing: why, by whom, and when, like 2026-11.");
        }
        if (!form.faults().isEmpty() || when == null) {
            show(context, form.faults());
            return;
        }
        List<Resolution> asides =
                ids.stream().map(id -> new Resolution(id, reason, who, when)).toList();
        keep(
                context,
                () -> new GrowArchive(desk.shop())
                        .resolve(Desk.form(context), archive().maker(), asides));
    }

    private void putYear(Context context) {
        YearForm form = new YearForm(context);
        form.row()
                .ifPresentOrElse(
                        row -> keep(
                                context,
                                () -> new GrowArchive(desk.shop())
                                        .year(Desk.form(context), archive().maker(), row)),
                        () -> show(context, form.faults()));
    }

    private void takeYearOut(Context context) {
        String serial = Desk.field(context, "serial");
        if (!serial.matches(DIGITS)) {
            throw new Refusal(422, "Say which row is to be taken out, by its serial.");
        }
        keep(
                context,
                () -> new GrowArchive(desk.shop())
                        .withoutYear(Desk.form(context), archive().maker(), Long.parseLong(serial)));
    }

    private void keep(Context context, Supplier<Saved> save) {
        try {
            Saved.Kept kept = Desk.kept(save.get());
            Back.to(context, "/archive?saved=" + Clocks.time(kept.at()));
        } catch (BadInput bad) {
            show(
                    context,
                    bad.faults().stream().map(Fault::what).map(OnBench::capital).toList());
        }
    }

    private void history(Context context) {
        List<ShowHistory.Line> newest = new ShowHistory(desk.shop())
                .of(StreamName.ARCHIVE).stream().limit(NEWEST).toList();
        desk.answer(
                context,
                "archive-history",
                new ArchiveHistoryPage(
                        desk.frame(context, "History of the archive"), EditDays.of(newest, OnBench::capital)));
    }

    private void undo(Context context) {
        String edit = Desk.field(context, "edit");
        if (!edit.matches("\\d{1,15}")) {
            throw new Refusal(422, "Say which edit is to be taken back, by its number.");
        }
        Desk.kept(new Undo(desk.shop()).undo(StreamName.ARCHIVE, Desk.form(context), Long.parseLong(edit)));
        Back.to(context, "/archive/history");
    }
}
