package hornwright.desk.web.photo;

import hornwright.bench.body.Pictured;
import hornwright.bench.survey.Moment;
import hornwright.bench.survey.Photo;
import hornwright.desk.journal.Blob;
import hornwright.desk.json.BadInput;
import hornwright.desk.picture.CleanPicture;
import hornwright.desk.use.KeepFile;
import hornwright.desk.use.PutPhoto;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Choices;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Uploads;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PhotoPrint;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Photographs: put in, laid side by side, pointed at, and the pictures themselves. */
public final class PhotoPages {
    private final Desk desk;

    public PhotoPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/photos", this::show);
        routes.post("/horn/{id}/photos", this::put);
        routes.get("/horn/{id}/photos/{photo}", this::one);
        routes.post("/horn/{id}/photos/{photo}/mark", this::mark);
        routes.post("/horn/{id}/photos/{photo}/out", this::takeOut);
        routes.get("/photo/{name}", this::picture);
    }

    private void show(Context context) {
        OnBench bench = desk.bench(context);
        PhotoRows rows = new PhotoRows(bench);
        String subject = subject(context, bench);
        String back = subject.isEmpty() ? "" : bench.picturedAddress(subject);
        desk.answer(
                context,
                "photos",
                new PhotosPage(
                        desk.frame(context, bench, "Photographs", "photos"),
                        Next.of(bench),
                        bench.id(),
                        rows.fact(),
                        said(context, bench),
                        rows.compared(asked(context, "look")),
                        rows.groups(),
                        rows.places(),
                        rows.form(asked(context, "shot"), subject, back, Desk.fresh()),
                        subject.isEmpty() ? "" : bench.pictured(subject),
                        back));
    }

    private void put(Context context) {
        OnBench bench = desk.bench(context);
        PutPhoto.Shows shows = new PutPhoto.Shows(
                Choices.of(Moment.class, Desk.field(context, "moment"), Moment.BEFORE),
                orNull(Desk.field(context, "shot")),
                orNull(Desk.field(context, "place")));
        Saved.Kept kept = kept(() -> new PutPhoto(desk.shop())
                .put(
                        bench.id(),
                        Desk.form(context),
                        Uploads.of(context, "photos"),
                        shows,
                        context.formParam("originals") != null));
        String look = shows.shot() != null
                ? "&look=shot." + shows.shot()
                : shows.place() != null ? "&look=place." + shows.place() : "";
        Back.to(context, bench.address("photos") + "?saved=" + kept.seq() + look);
    }

    private void one(Context context) {
        OnBench bench = desk.bench(context);
        Photo photo = photo(context, bench);
        PhotoRows rows = new PhotoRows(bench);
        PhotoPrint print = rows.print(photo);
        PhotoMarks marks = new PhotoMarks(bench, photo);
        desk.answer(
                context,
                "photo",
                new PhotoPage(
                        desk.frame(context, bench, rows.title(photo), "photos"),
                        bench.id(),
                        photo.id(),
                        rows.title(photo),
                        print.line(),
                        print,
                        marks.marks(),
                        PhotoMarks.cells(),
                        marks.choices(),
                        bench.history().seq(),
                        Desk.fresh(),
                        said(context, bench)));
    }

    /** A mark set, or with an empty spot taken off again. */
    private void mark(Context context) {
        OnBench bench = desk.bench(context);
        Photo photo = photo(context, bench);
        String place = Desk.field(context, "place");
        String at = Desk.field(context, "at");
        if (!at.matches("|[01](\\.\\d{1,6})?,[01](\\.\\d{1,6})?")) {
            throw new Refusal(422, "Say where on the picture: two shares of width and height, such as 0.5,0.25.");
        }
        PutPhoto photos = new PutPhoto(desk.shop());
        Saved.Kept kept = kept(() -> at.isEmpty()
                ? photos.unmark(bench.id(), Desk.form(context), photo.id(), place)
                : photos.mark(bench.id(), Desk.form(context), photo.id(), mark(place, at)));
        Back.to(context, bench.address("photos/" + photo.id()) + "?saved=" + kept.seq());
    }

    private static Photo.Mark mark(String place, String at) {
        String[] shares = at.split(",");
        return new Photo.Mark(place, Double.parseDouble(shares[0]), Double.parseDouble(shares[1]));
    }

    private void takeOut(Context context) {
        OnBench bench = desk.bench(context);
        Photo photo = photo(context, bench);
        Saved.Kept kept = kept(() -> new PutPhoto(desk.shop()).takeOut(bench.id(), Desk.form(context), photo.id()));
        Back.to(context, bench.address("photos") + "?saved=" + kept.seq());
    }

    /**
     * A picture by the hash of its bytes. Opened by itself it is handed over as a file and run by nobody. Source: OWASP
     * ASVS 5.0.0, 3.2.1 and 5.4.1.
     */
    private void picture(Context context) {
        String name = context.pathParam("name");
        KeepFile files = new KeepFile(desk.shop());
        Blob blob = files.find(name)
                .filter(found -> found.media().equals(CleanPicture.MEDIA))
                .orElseThrow(() -> Refusal.notFound("There is no such photograph."));
        context.header("Content-Security-Policy", "default-src 'none'; sandbox")
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + blob.sha256().substring(0, 12) + ".jpg\"")
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .header("ETag", "\"" + blob.sha256() + "\"");
        if (("\"" + blob.sha256() + "\"").equals(context.header("If-None-Match"))) {
            context.status(304);
            return;
        }
        context.contentType(CleanPicture.MEDIA)
                .result(files.read(blob.sha256())
                        .orElseThrow(() -> Refusal.notFound("The file of this photograph is missing; run check.")));
    }

    private static Photo photo(Context context, OnBench bench) {
        return Optional.ofNullable(bench.job().keeping().photos().get(context.pathParam("photo")))
                .orElseThrow(() -> Refusal.notFound("This horn has no such photograph."));
    }

    /** What a form may not say is answered with all of its faults at once. */
    private static Saved.Kept kept(Supplier<Saved> saving) {
        try {
            return Desk.kept(saving.get());
        } catch (BadInput bad) {
            throw new Refusal(422, Refusal.sentences(bad));
        }
    }

    private static String said(Context context, OnBench bench) {
        String seq = asked(context, "saved");
        boolean known = seq.matches("[1-9]\\d{0,8}")
                && Long.parseLong(seq) <= bench.history().seq();
        return known
                ? "saved "
                        + Clocks.time(bench.history()
                                .edits()
                                .get(Integer.parseInt(seq) - 1)
                                .at())
                : "";
    }

    /** What a photograph is asked for; what stands for nothing on this horn is passed over. */
    private static String subject(Context context, OnBench bench) {
        String asked = asked(context, "of");
        return Pictured.name(bench.keywork(), bench.job().readings().current(), asked)
                        .isPresent()
                ? asked
                : "";
    }

    private static String asked(Context context, String name) {
        return Objects.requireNonNullElse(context.queryParam(name), "");
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
