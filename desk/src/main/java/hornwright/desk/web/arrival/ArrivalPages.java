package hornwright.desk.web.arrival;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Identity;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Shot;
import hornwright.bench.survey.Stage;
import hornwright.desk.find.Trouble;
import hornwright.desk.journal.Person;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.desk.use.Decide;
import hornwright.desk.use.Form;
import hornwright.desk.use.IdentifyHorn;
import hornwright.desk.use.KeepPerson;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.NoteOwner;
import hornwright.desk.use.Saved;
import hornwright.desk.use.TickPhoto;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Taking a horn in: whose it is, what for, which one, and what must be caught before strip-down. */
public final class ArrivalPages {
    private static final int LONGEST = 200;

    private final Desk desk;

    public ArrivalPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/arrival", context -> show(context, desk.bench(context), "", "", ""));
        routes.post("/horn/{id}/arrival", this::note);
        routes.post("/horn/{id}/identity", this::identify);
        routes.post("/horn/{id}/photographs", this::tick);
    }

    private void show(Context context, OnBench bench, String said, String whoFault, String whichFault) {
        ArrivalRows rows = new ArrivalRows(bench);
        desk.answer(
                context,
                "arrival",
                new ArrivalPage(
                        desk.frame(context, bench, "Arrival", "arrival"),
                        Next.of(bench),
                        bench.id(),
                        bench.history().seq(),
                        Desk.fresh(),
                        rows.figure(),
                        rows.path(),
                        rows.baseline(),
                        bench.job().stage() != Stage.ARRIVAL,
                        who(bench, rows, said, whoFault),
                        which(bench, whichFault),
                        rows.shots(Desk.fresh(), "")));
    }

    private ArrivalPage.Who who(OnBench bench, ArrivalRows rows, String said, String fault) {
        Optional<Person> owner =
                Optional.ofNullable(bench.job().arrival().owner()).flatMap(new KeepPerson(desk.shop())::find);
        return new ArrivalPage.Who(
                owner.map(Person::name).orElse(""),
                owner.map(Person::telephone).orElse(""),
                owner.map(Person::email).orElse(""),
                bench.job().arrival().complaint(),
                Trouble.in(bench.job().arrival().complaint()).stream()
                        .map(trouble -> new ArrivalPage.Way(trouble.title(), bench.address(trouble.page())))
                        .toList(),
                rows.uses(),
                said,
                fault);
    }

    private static ArrivalPage.Which which(OnBench bench, String fault) {
        Identity identity = bench.job().identity();
        boolean free = bench.job().readings().current().isEmpty()
                && bench.job().findings().byPlace().isEmpty();
        return new ArrivalPage.Which(
                identity.maker(),
                identity.serial() == null ? "" : identity.serial().toString(),
                free ? patterns(identity.keywork()) : List.of(),
                SwitchForm.choices(identity.switches()),
                !fault.isEmpty(),
                fault);
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

    private void note(Context context) {
        OnBench bench = desk.bench(context);
        String name = Desk.field(context, "owner");
        String complaint = Desk.field(context, "complaint");
        if (name.length() > LONGEST || complaint.length() > LONGEST) {
            context.status(422);
            show(context, bench, "", "A name or a complaint holds 200 letters; longer things go into a note.", "");
            return;
        }
        Form form = Desk.form(context);
        new NoteOwner(desk.shop())
                .note(
                        bench.id(),
                        new Form(form.expectedSeq(), form.hand(), form.key() + "-who"),
                        new NoteOwner.Owner(name, Desk.field(context, "telephone"), Desk.field(context, "email")),
                        complaint)
                .ifPresent(Desk::kept);
        AgreedUse use = use(Desk.field(context, "use"));
        if (use != null
                && bench.job().agreedUse().filter(agreed -> agreed == use).isEmpty()) {
            Desk.kept(new Decide(desk.shop())
                    .decide(
                            bench.id(),
                            new Form(form.expectedSeq(), form.hand(), form.key() + "-use"),
                            new Decision.Use(use, "agreed with the owner")));
        }
        Back.to(context, bench.address("arrival") + "#who");
    }

    private static @org.jspecify.annotations.Nullable AgreedUse use(String word) {
        return java.util.stream.Stream.of(AgreedUse.values())
                .filter(use -> use.name().equals(word))
                .findFirst()
                .orElse(null);
    }

    private void identify(Context context) {
        OnBench bench = desk.bench(context);
        String serial = Desk.field(context, "serial").replace(" ", "");
        String maker = Desk.field(context, "maker");
        String pattern = Desk.field(context, "pattern");
        Identity before = bench.job().identity();
        if (!serial.matches("\\d{0,12}") || maker.length() > LONGEST) {
            context.status(422);
            show(context, bench, "", "", "A serial is a whole number like 41207; leave it empty when there is none.");
            return;
        }
        boolean other = KeyworkFile.SHIPPED.contains(pattern) && !pattern.equals(before.keywork());
        Keywork keywork = Keyworks.named(other ? pattern : before.keywork());
        Identity after = new Identity(
                keywork.id(),
                maker,
                keywork.voice(),
                serial.isEmpty() ? null : Long.valueOf(serial),
                other ? keywork.switches() : SwitchForm.read(context, before.switches()));
        String fault = fault(bench, after);
        if (!fault.isEmpty()) {
            context.status(422);
            show(context, bench, "", "", fault);
        } else {
            if (!after.equals(before)) {
                Desk.kept(new IdentifyHorn(desk.shop()).identify(bench.id(), Desk.form(context), after));
            }
            Back.to(context, bench.address("arrival") + "#which");
        }
    }

    /** Why the horn cannot be that one; empty when it can. What was written down must still lie somewhere. */
    private static String fault(OnBench bench, Identity after) {
        try {
            Keywork keywork = Keyworks.of(after);
            return Orphans.of(bench.job(), keywork)
                    .map(orphan ->
                            "There is a reading or finding of %s, which such a horn does not have; take it back first."
                                    .formatted(orphan))
                    .orElse("");
        } catch (BadInput refused) {
            return OnBench.capital(refused.faults().stream().map(Fault::what).collect(Collectors.joining("; ")) + ".");
        }
    }

    /** Sets and takes off the ticks that differ from what is kept. */
    private void tick(Context context) {
        OnBench bench = desk.bench(context);
        List<String> ticked = context.formParams("shot");
        Form form = Desk.form(context);
        TickPhoto ticks = new TickPhoto(desk.shop());
        Instant at = null;
        for (Shot shot : Shot.values()) {
            boolean was = bench.job().photos().containsKey(shot.id());
            if (was != ticked.contains(shot.id())) {
                Form own = new Form(form.expectedSeq(), form.hand(), form.key() + "-" + shot.id());
                Saved saved =
                        was ? ticks.untick(bench.id(), own, shot.id()) : ticks.tick(bench.id(), own, shot.id(), null);
                at = Desk.kept(saved).at();
            }
        }
        if (Live.asked(context)) {
            String said = at == null ? "" : "saved " + Clocks.time(Objects.requireNonNull(at));
            desk.answer(context, "arrival-shots", new ArrivalRows(desk.bench(bench.id())).shots(Desk.fresh(), said));
        } else {
            Back.to(context, bench.address("arrival") + "#photographs");
        }
    }
}
