package hornwright.desk.web.page;

import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.job.Job;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.seat.SeatNumbers;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundQuestion;
import hornwright.desk.journal.Hand;
import hornwright.desk.json.BadInput;
import hornwright.desk.use.Ahead;
import hornwright.desk.use.Form;
import hornwright.desk.use.HearHorn;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.LaterChapters;
import hornwright.desk.use.ProposePlan;
import hornwright.desk.use.Saved;
import hornwright.desk.use.Shop;
import hornwright.desk.use.ShowAsBuilt;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MissingPart;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.SoundScripts;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What every page needs at hand: the shop, the plans, the templates and the frame. */
public final class Desk {
    private static final Hand HAND = new Hand("bench", "bench");

    /** As many horns as a shelf shows before one scrolls. */
    private static final int LIKELY_NEXT = 12;

    private final Shop shop;
    private final ProposePlan plans;
    private final ShowAsBuilt asBuilt;
    private final HearHorn ears;
    private final LaterChapters later;
    private final Assets assets;
    private final Templates templates;

    public Desk(Shop shop, Assets assets, Templates templates) {
        this.shop = shop;
        this.plans = new ProposePlan(shop);
        this.asBuilt = new ShowAsBuilt(shop);
        this.ears = new HearHorn(shop);
        this.later = new LaterChapters(plans);
        this.assets = assets;
        this.templates = templates;
    }

    public Shop shop() {
        return shop;
    }

    public ProposePlan plans() {
        return plans;
    }

    /** The language pages are written in. */
    public String language() {
        return templates.texts().tag();
    }

    /** A piece of a page, rendered. */
    public String text(String template, Object model) {
        return templates.text(template, model);
    }

    /** Begins on the plans of the horns most likely to be opened next. */
    public void reckonAhead() {
        Ahead.reckon(shop, plans, LIKELY_NEXT);
    }

    /** Places found bare, with what is known to fit there. */
    public List<MissingPart> missing(OnBench bench) {
        return MissingPart.of(bench, shop.archive().state().of(bench.keywork().maker()));
    }

    public ShowAsBuilt asBuilt() {
        return asBuilt;
    }

    public LaterChapters later() {
        return later;
    }

    public void answer(Context context, String template, Object model) {
        templates.answer(context, template, model);
    }

    /** The horn the address names, with its plan. */
    public OnBench bench(Context context) {
        return bench(context.pathParam("id"));
    }

    public OnBench bench(String id) {
        Job job = job(id);
        return new OnBench(shop.job(id), job, Keyworks.of(job), plans.of(job));
    }

    /** How the horn plays. */
    public SoundAnswer sound(OnBench bench) {
        return sound(bench, Set.of());
    }

    /** The same with heights for the chosen fingerings only; for all when none is chosen. */
    public SoundAnswer sound(OnBench bench, Set<String> chosen) {
        return ears.of(bench.job(), bench.keywork(), bench.plan(), chosen);
    }

    public HearHorn ears() {
        return ears;
    }

    /** Everything a number of this horn's sound may rest on, the because of that id among it if there is one. */
    public Becauses becauses(OnBench bench, String id) {
        Becauses all = bench.plan()
                .becauses()
                .and(sound(bench, SoundQuestion.chosenIn(id)).becauses())
                .and(ears.compare(bench.job(), bench.keywork(), bench.plan()).becauses())
                .and(ears.whyLost(bench.keywork(), id));
        return ears.suspects(bench.job(), bench.keywork())
                .map(suspects -> all.and(suspects.becauses()))
                .orElse(all);
    }

    /** Where the script that records lies. */
    public SoundScripts scripts() {
        return assets.scripts();
    }

    /** The same horn with how the pad at that place should close; as it is for any other place. */
    public OnBench closing(OnBench bench, Place place) {
        if (place.kind() != PlaceKind.PAD || !(place.belongsTo() instanceof Owner.OfCup cup)) {
            return bench;
        }
        return later.seat(bench.job(), cup.id())
                .map(pad ->
                        with(bench, bench.plan().with(SeatNumbers.numbers(List.of(pad), Map.of(cup.id(), place.id())))))
                .orElse(bench);
    }

    /** The same horn as it would be with that plan. */
    public OnBench with(OnBench bench, Plan plan) {
        return new OnBench(bench.history(), bench.job(), bench.keywork(), plan);
    }

    private Job job(String id) {
        try {
            return shop.jobNow(id);
        } catch (BadInput none) {
            throw Refusal.notFound("There is no horn \"%s\" on this shelf.".formatted(id));
        }
    }

    public Frame frame(Context context, String title) {
        return Frames.of(
                        context, assets, templates.texts(), shop.house().state().name(), title)
                .with(ShopTray.at(context.path()), ArchiveSlip.at(context.path()))
                .toldAt(LivePages.address(context, "/live", shop.come()));
    }

    /** The frame of a page of a horn; {@code page} is the last word of its address. */
    public Frame frame(Context context, OnBench bench, String title, String page) {
        Tray tray = new Tray(bench, page);
        long seq = bench.history().seq();
        String line = "Edit %d, saved %s"
                        .formatted(
                                seq,
                                Clocks.day(bench.history().edits().getLast().at())) + " at "
                + Clocks.time(bench.history().edits().getLast().at());
        return frame(context, title + ", " + bench.name())
                .ofHorn(
                        bench.name(),
                        bench.id(),
                        bench.address("history"),
                        LivePages.address(context, bench.address("live"), shop.come(bench.id())),
                        line)
                .with(tray.compartments(), tray.sheets());
    }

    /** What a form brought along; a form without its key counts as sent once. */
    public static Form form(Context context) {
        String key = context.formParam("key");
        return new Form(
                seq(context.formParam("seq")),
                HAND,
                key == null || key.isBlank() || key.length() > 100 ? fresh() : key);
    }

    public static String fresh() {
        return UUID.randomUUID().toString();
    }

    private static long seq(@Nullable String text) {
        return text != null && text.matches("\\d{1,15}") ? Long.parseLong(text) : 0;
    }

    /** One field of a form, "" when it is absent. */
    public static String field(Context context, String name) {
        String value = context.formParam(name);
        return value == null ? "" : value.strip();
    }

    public static Saved.Kept kept(Saved saved) {
        return switch (saved) {
            case Saved.Kept kept -> kept;
            case Saved.Refused refused -> throw new Refusal(409, refused.why());
            case Saved.Conflict conflict -> throw new Refusal(409, conflict(conflict));
        };
    }

    private static String conflict(Saved.Conflict conflict) {
        List<String> theirs =
                conflict.theirs().stream().map(edit -> edit.edit().inWords()).toList();
        List<String> mine = conflict.mine().stream().map(edit -> edit.inWords()).toList();
        return "Two benches changed this: \"%s\" was saved at %s, before your \"%s\". Which stands? Go back, look, and save yours again if it does."
                .formatted(
                        String.join("; ", theirs),
                        Clocks.time(conflict.theirs().getLast().at()),
                        String.join("; ", mine));
    }
}
