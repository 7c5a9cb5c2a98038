package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Voice;
import hornwright.desk.paper.AsBuiltWords;
import hornwright.desk.paper.PaperSize;
import hornwright.desk.paper.SheetHead;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.OfferFindings;
import hornwright.desk.use.ShowAsBuilt;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What left the factory: for the horn on the bench, for any serial, and how it is known. */
public final class AsBuiltPages {
    private static final String DIGITS = "\\d{1,9}";
    private static final String LOOK_FIRST =
            "You have not said yet what you see on this horn. Look first, then read what the factory used: who knows what to expect finds it.";

    private final Desk desk;

    public AsBuiltPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/as-built", this::horn);
        routes.post("/horn/{id}/as-built/offer", this::offer);
        routes.get("/archive/as-built", this::serial);
        routes.get("/archive/as-built.pdf", this::print);
        routes.get("/archive/place", this::evidence);
    }

    private void horn(Context context) {
        OnBench bench = desk.bench(context);
        Frame frame = desk.frame(context, bench, "As built", "as-built");
        Long serial = bench.job().identity().serial();
        if (serial == null) {
            throw new Refusal(
                    404,
                    "This horn has no serial number yet, so nothing is known of what left the factory. Say it where the horn is identified.");
        }
        ShowAsBuilt.Sheet sheet =
                desk.asBuilt().of(bench.keywork(), bench.job().identity().voice(), serial);
        boolean blind = bench.job().findings().places().isEmpty()
                && bench.job().findings().groups().isEmpty();
        AsBuiltRows rows = new AsBuiltRows(sheet, id -> evidenceAddress(sheet, id) + "&horn=" + bench.id());
        AsBuiltPage page =
                page(frame, sheet, rows, bench, blind && context.queryParam("show") == null ? LOOK_FIRST : "", "");
        desk.answer(context, "as-built", page);
    }

    /** A finding becomes evidence only when somebody says so here. */
    private void offer(Context context) {
        OnBench bench = desk.bench(context);
        OfferFindings offer = new OfferFindings(desk.shop());
        List<String> places =
                context.formParams("place").isEmpty() ? offer.offerable(bench.job()) : context.formParams("place");
        if (places.isEmpty()) {
            throw new Refusal(422, "Everything judged original on this horn is in the archive already.");
        }
        Desk.kept(offer.offer(bench.id(), Desk.form(context), places));
        Back.to(context, "/archive/witness/shelf-" + bench.id());
    }

    private AsBuiltPage page(
            Frame frame,
            ShowAsBuilt.Sheet sheet,
            AsBuiltRows rows,
            @Nullable OnBench bench,
            String first,
            String fault) {
        String horn = bench == null ? "" : "&horn=" + bench.id();
        return new AsBuiltPage(
                frame,
                bench == null ? null : rows.next(bench.address("survey")),
                rows.title(),
                rows.lead(),
                rows.year(),
                first,
                bench == null ? "" : bench.address(""),
                new RulerRows(sheet, id -> evidenceAddress(sheet, id) + horn).all(),
                rows.looks(),
                rows.groups(),
                bench == null ? null : AsBuiltRows.origin(bench),
                bench == null
                        ? 0
                        : new OfferFindings(desk.shop()).offerable(bench.job()).size(),
                desk.shop().archive().seq(),
                Desk.fresh(),
                "/archive/as-built.pdf?" + asked(sheet) + horn,
                new AsBuiltPage.Asked(bench == null ? voices(sheet.voice()) : List.of(), "" + sheet.serial(), fault));
    }

    private void serial(Context context) {
        String typed = Objects.requireNonNullElse(context.queryParam("serial"), "");
        String fault = typed.isEmpty() || typed.matches(DIGITS)
                ? ""
                : "A serial is digits like 41207; this reads \"" + typed + "\".";
        Keywork keywork = keywork(context);
        Voice voice = keywork.voice();
        long serial = typed.matches(DIGITS) ? Long.parseLong(typed) : middle(keywork.maker(), voice);
        ShowAsBuilt.Sheet sheet = desk.asBuilt().of(keywork, voice, serial);
        if (!fault.isEmpty()) {
            context.status(422);
        }
        AsBuiltRows rows = new AsBuiltRows(sheet, id -> evidenceAddress(sheet, id));
        desk.answer(context, "as-built", page(desk.frame(context, "As built"), sheet, rows, null, "", fault));
    }

    /** Where nobody names a serial, one in the middle of what is known. */
    private long middle(String maker, Voice voice) {
        long[] serials = desk.shop().archive().state().of(maker).witnesses().stream()
                .filter(witness -> witness.voice() == voice)
                .mapToLong(witness -> witness.serial())
                .sorted()
                .toArray();
        return serials.length == 0 ? 1 : serials[serials.length / 2];
    }

    private void print(Context context) {
        ShowAsBuilt.Sheet sheet = asked(context);
        String line = desk.shop().house().state().name() + " · " + Clocks.day(Instant.now());
        String title =
                "%s %s %d".formatted(sheet.keywork().maker(), sheet.voice().word(), sheet.serial());
        PaperSize size = "letter".equals(context.queryParam("size")) ? PaperSize.LETTER : PaperSize.A4;
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"as-built-" + sheet.serial() + ".pdf\"");
        context.result(new AsBuiltWords(sheet.keywork(), sheet.built(), sheet.serial(), sheet.shown())
                .sheet(new SheetHead(title, line), sheet.families(), sheet.witnesses(), sheet.year())
                .pdf(size));
    }

    private void evidence(Context context) {
        ShowAsBuilt.Sheet sheet = asked(context);
        String id = Objects.requireNonNullElse(context.queryParam("place"), "");
        Place place = sheet.keywork()
                .places()
                .find(id)
                .orElseThrow(() -> Refusal.notFound("There is no place \"%s\" on such a horn.".formatted(id)));
        Archive archive = desk.shop().archive().state().of(sheet.keywork().maker());
        String horn = context.queryParam("horn");
        OnBench bench = horn == null ? null : desk.bench(horn);
        String title = OnBench.capital(place.display()) + " at " + sheet.serial();
        Frame frame = bench == null ? desk.frame(context, title) : desk.frame(context, bench, title, "as-built");
        String back = bench == null ? "/archive/as-built?" + asked(sheet) : bench.address("as-built") + "?show=1";
        desk.answer(context, "evidence", new EvidenceRows(sheet, archive, place).page(frame, back));
    }

    /** The sheet the query speaks of: that of a horn on the shelf, or of a voice and serial. */
    private ShowAsBuilt.Sheet asked(Context context) {
        String serial = Objects.requireNonNullElse(context.queryParam("serial"), "");
        if (!serial.matches(DIGITS)) {
            throw new Refusal(422, "Say for which serial, in digits like 41207.");
        }
        String horn = context.queryParam("horn");
        Keywork keywork = horn == null ? keywork(context) : desk.bench(horn).keywork();
        return desk.asBuilt().of(keywork, keywork.voice(), Long.parseLong(serial));
    }

    private static Keywork keywork(Context context) {
        String word = Objects.requireNonNullElse(context.queryParam("voice"), Voice.ALTO.word());
        return Stream.of(Voice.values())
                .filter(voice -> voice.word().equals(word))
                .flatMap(voice -> Keyworks.ofVoice(voice).stream())
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("No pattern of a \"%s\" is at hand.".formatted(word)));
    }

    private static List<PlacePanel.Option> voices(Voice chosen) {
        return Stream.of(Voice.values())
                .filter(voice -> Keyworks.ofVoice(voice).isPresent())
                .map(voice -> new PlacePanel.Option(voice.word(), voice.word(), voice == chosen))
                .toList();
    }

    static String asked(ShowAsBuilt.Sheet sheet) {
        return "voice=" + sheet.voice().word() + "&serial=" + sheet.serial();
    }

    private static String evidenceAddress(ShowAsBuilt.Sheet sheet, String place) {
        return "/archive/place?" + asked(sheet) + "&place=" + place;
    }
}
