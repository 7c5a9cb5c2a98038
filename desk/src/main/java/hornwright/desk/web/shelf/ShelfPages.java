package hornwright.desk.web.shelf;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Arrival;
import hornwright.bench.job.Identity;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Decision;
import hornwright.desk.journal.Card;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.OpenJob;
import hornwright.desk.use.Saved;
import hornwright.desk.use.Shelf;
import hornwright.desk.use.ShelfMemory;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PadSizes;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.stream.Stream;

/** The shelf: which horns are in the shop, and the form that puts a new one on it. */
public final class ShelfPages {
    private final Desk desk;

    public ShelfPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/", context -> show(context, "", "", "", ""));
        routes.post("/horns", this::open);
    }

    private void show(Context context, String pattern, String serial, String complaint, String fault) {
        List<Card> cards = new Shelf(desk.shop()).all();
        ShelfMemory memory = ShelfMemory.in(desk.language(), desk.shop());
        List<String> stands = cards.stream()
                .map(card -> memory.of(card, () -> desk.text("stand", stand(desk.bench(card.job()), card))))
                .toList();
        desk.answer(
                context,
                "shelf",
                new ShelfPage(
                        desk.frame(context, "The shelf"),
                        lead(stands.size()),
                        stands,
                        memory.ofProgram("ghost", () -> desk.text("ghost", ghost())),
                        new ShelfPage.NewHorn(
                                pattern.isEmpty()
                                        ? memory.ofProgram("patterns", () -> desk.text("patterns", patterns("")))
                                        : desk.text("patterns", patterns(pattern)),
                                uses(Desk.field(context, "use")),
                                serial,
                                complaint,
                                fault,
                                !fault.isEmpty() || stands.isEmpty(),
                                Desk.fresh())));
        memory.keep();
        desk.reckonAhead();
    }

    private static Miniature ghost() {
        return Miniature.of(Keyworks.named(KeyworkFile.SHIPPED.getFirst()), cup -> PadSizes.Size.OPEN);
    }

    private static String lead(int count) {
        return switch (count) {
            case 0 -> "Nothing on the shelf yet. A horn needs only its voice and keywork; the rest can wait.";
            case 1 -> "One horn in the shop.";
            default -> count + " horns in the shop.";
        };
    }

    private ShelfPage.Stand stand(OnBench bench, Card card) {
        Identity identity = bench.job().identity();
        String maker = identity.maker().isEmpty() ? "maker unknown" : identity.maker();
        return new ShelfPage.Stand(
                bench.address(""),
                card.serial().isEmpty() ? "no serial" : card.serial(),
                maker + " " + identity.voice().word(),
                bench.job().arrival().complaint(),
                card.stage(),
                card.readings() + " readings",
                Next.of(bench).brief(),
                Miniature.of(bench.keywork(), cup -> PadSizes.size(bench, cup)));
    }

    private void open(Context context) {
        String pattern = Desk.field(context, "pattern");
        String serial = Desk.field(context, "serial");
        String complaint = Desk.field(context, "complaint");
        if (!KeyworkFile.SHIPPED.contains(pattern)) {
            refused(context, pattern, serial, complaint, "Choose the pattern that is nearest to this horn.");
        } else if (!serial.replace(" ", "").matches("\\d{0,12}")) {
            refused(
                    context,
                    pattern,
                    serial,
                    complaint,
                    "A serial is a whole number like 41207; leave it empty when there is none.");
        } else {
            Saved.Kept kept = Desk.kept(new OpenJob(desk.shop())
                    .open(
                            Desk.form(context),
                            identity(Keyworks.named(pattern), serial.replace(" ", "")),
                            new Arrival(null, complaint),
                            use(context)));
            context.redirect("/horn/" + kept.stream().jobId(), HttpStatus.SEE_OTHER);
        }
    }

    private void refused(Context context, String pattern, String serial, String complaint, String fault) {
        context.status(422);
        show(context, pattern, serial, complaint, fault);
    }

    private static Identity identity(Keywork keywork, String serial) {
        return new Identity(
                keywork.id(),
                keywork.maker(),
                keywork.voice(),
                serial.isEmpty() ? null : Long.parseLong(serial),
                keywork.switches());
    }

    private static Decision.@org.jspecify.annotations.Nullable Use use(Context context) {
        return Stream.of(AgreedUse.values())
                .filter(use -> use.name().equals(Desk.field(context, "use")))
                .findFirst()
                .map(use -> new Decision.Use(use, "agreed at arrival"))
                .orElse(null);
    }

    private static List<PlacePanel.Option> patterns(String chosen) {
        return KeyworkFile.SHIPPED.stream()
                .map(Keyworks::named)
                .map(keywork -> new PlacePanel.Option(
                        keywork.id(),
                        keywork.maker() + " " + keywork.name(),
                        keywork.id().equals(chosen)))
                .toList();
    }

    private static List<PlacePanel.Option> uses(String chosen) {
        return Stream.of(AgreedUse.values())
                .map(use ->
                        new PlacePanel.Option(use.name(), use.word(), use.name().equals(chosen)))
                .toList();
    }
}
