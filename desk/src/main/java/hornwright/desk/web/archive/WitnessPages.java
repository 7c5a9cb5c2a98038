package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.How;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Painting;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.bench.horn.Word;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Standing;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fault;
import hornwright.desk.use.GrowArchive;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A witness: which horn it is, and what is seen on it, painted group by group and kept in one press. */
public final class WitnessPages {
    private static final String FAULTY = "Nothing was kept yet.";

    private final Desk desk;
    private final Map<String, UnrolledHorn> drawn = new ConcurrentHashMap<>();

    public WitnessPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/archive/witness/{id}", context -> show(context, witness(context), List.of(), WitnessForm.fresh()));
        routes.post("/archive/witness/{id}", this::amend);
        routes.post("/archive/witness/{id}/looks", this::look);
    }

    private Archive archive(String maker) {
        return desk.shop().archive().state().of(maker);
    }

    private Witness witness(Context context) {
        String id = context.pathParam("id");
        return desk.shop().archive().state().byMaker().values().stream()
                .flatMap(archive -> archive.witnesses().stream())
                .filter(witness -> witness.id().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no witness \"%s\" in the archive.".formatted(id)));
    }

    private static Keywork keywork(Witness witness) {
        return Keyworks.ofVoice(witness.voice())
                .orElseThrow(() -> Refusal.notFound("No pattern of a %s is at hand, so its places have no names here."
                        .formatted(witness.voice().word())));
    }

    private void show(Context context, Witness witness, List<String> faults, WitnessRows.Typed typed) {
        Keywork keywork = keywork(witness);
        Archive archive = archive(witness.maker());
        WitnessRows rows = new WitnessRows(keywork, archive, witness, typed);
        String title = OnBench.capital(witness.voice().word()) + " " + witness.serial();
        String at = context.queryParam("saved");
        desk.answer(
                context,
                "witness",
                new WitnessPage(
                        desk.frame(context, title + ", witness"),
                        witness.id(),
                        title,
                        fact(witness, rows.seen()),
                        facts(witness),
                        drawing(keywork, rows.seen()),
                        how(archive, witness, typed),
                        like(archive, witness, typed.of("like")),
                        rows.groups(),
                        faults,
                        at != null && at.matches("\\d\\d:\\d\\d:\\d\\d") ? "saved " + at : "",
                        desk.shop().archive().seq(),
                        Desk.fresh()));
    }

    private static String fact(Witness witness, Map<String, Observation> seen) {
        String mixed = witness.isMixed() ? " Its parts carry different numbers: it is mixed." : "";
        return (seen.isEmpty()
                        ? "Nothing was said of it yet."
                        : seen.size() + (seen.size() == 1 ? " place" : " places") + " looked at.")
                + mixed;
    }

    static WitnessPage.Facts facts(Witness witness) {
        return new WitnessPage.Facts(
                "" + witness.serial(),
                voices(witness.voice()),
                witness.model(),
                witness.built() == null ? "" : witness.built().text(),
                words(Integrity.values(), witness.integrity()),
                witness.assemblyNumbers().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(stamp -> stamp.getKey() + " " + stamp.getValue())
                        .collect(Collectors.joining(", ")));
    }

    public static List<PlacePanel.Option> voices(Voice chosen) {
        return Stream.of(Voice.values())
                .filter(voice -> Keyworks.ofVoice(voice).isPresent())
                .map(voice -> new PlacePanel.Option(voice.name(), voice.word(), voice == chosen))
                .toList();
    }

    public static <E extends Enum<E> & Word> List<PlacePanel.Option> words(E[] all, E chosen) {
        return Stream.of(all)
                .map(one -> new PlacePanel.Option(one.name(), one.word(), one == chosen))
                .toList();
    }

    /** As in the last sitting with this horn; first hand and seen at the first. */
    private static WitnessPage.How how(Archive archive, Witness witness, WitnessRows.Typed typed) {
        List<Observation> own = archive.observations().stream()
                .filter(look -> look.witness().equals(witness.id()))
                .toList();
        Observation last = own.isEmpty() ? null : own.getLast();
        String means = typed.of("means");
        return new WitnessPage.How(
                MeansChoice.ofHorns().stream()
                        .map(one -> new PlacePanel.Option(
                                one.name(),
                                one.label(),
                                means.isEmpty()
                                        ? last == null
                                                ? one == MeansChoice.SEEN
                                                : one.means().equals(last.means())
                                        : one.name().equals(means)))
                        .toList(),
                words(Hand.values(), last == null ? Hand.FIRST : last.hand()),
                words(Bearing.values(), Bearing.DIRECT),
                words(Interest.values(), last == null ? Interest.NEUTRAL : last.interest()),
                typed.of("origin"),
                last == null || last.citation() == null ? typed.of("citation") : last.citation(),
                typed.of("file"));
    }

    /** Other horns of the voice, the nearest serial first. */
    private static List<PlacePanel.Option> like(Archive archive, Witness witness, String chosen) {
        List<PlacePanel.Option> like = new ArrayList<>();
        like.add(new PlacePanel.Option("", "only what I paint", chosen.isEmpty()));
        archive.witnesses().stream()
                .filter(other -> other.voice() == witness.voice() && !other.id().equals(witness.id()))
                .sorted(Comparator.comparingLong(other -> Math.abs(other.serial() - witness.serial())))
                .map(other -> new PlacePanel.Option(
                        other.id(),
                        "the same as " + other.serial() + ", except what I paint",
                        other.id().equals(chosen)))
                .forEach(like::add);
        return like;
    }

    private String drawing(Keywork keywork, Map<String, Observation> seen) {
        return drawn.computeIfAbsent(keywork.id(), none -> UnrolledHorn.of(keywork))
                .screen(place -> {
                    Observation look = seen.get(place.id());
                    return look == null
                            ? new Showing.Shown("unknown", Standing.MISSING)
                            : new Showing.Shown(look.material(), Standing.FOUND);
                });
    }

    private void amend(Context context) {
        Witness before = witness(context);
        WitnessForm form = new WitnessForm(context);
        Witness after = form.witness(before.id(), before.maker());
        if (!form.faults().isEmpty()) {
            context.status(422);
            show(context, before, form.faults(), WitnessForm.fresh());
            return;
        }
        Saved.Kept kept = Desk.kept(new GrowArchive(desk.shop()).witness(Desk.form(context), after));
        Back.to(context, "/archive/witness/" + after.id() + "?saved=" + Clocks.time(kept.at()));
    }

    private void look(Context context) {
        Witness witness = witness(context);
        Keywork keywork = keywork(witness);
        Archive archive = archive(witness.maker());
        WitnessForm form = new WitnessForm(context, desk.shop());
        How how = form.how(
                kind -> kind == Kind.PHOTO ? "photographs of " + witness.serial() : "horn " + witness.serial());
        List<Painting.Stroke> strokes = form.strokes(keywork);
        String like = Desk.field(context, "like");
        List<Observation> same = archive.observations().stream()
                .filter(look -> look.witness().equals(like))
                .toList();
        List<Observation> looks = new Painting(archive, witness, how).of(strokes, same);
        if (looks.isEmpty()) {
            form.faults().add("Choose a material for at least one kind of place.");
        }
        if (!form.faults().isEmpty()) {
            refuse(context, witness, form, form.faults());
            return;
        }
        try {
            Saved.Kept kept = Desk.kept(new GrowArchive(desk.shop()).observe(Desk.form(context), looks));
            Back.to(context, "/archive/witness/" + witness.id() + "?saved=" + Clocks.time(kept.at()));
        } catch (BadInput bad) {
            refuse(
                    context,
                    witness,
                    form,
                    bad.faults().stream().map(Fault::what).map(OnBench::capital).toList());
        }
    }

    private void refuse(Context context, Witness witness, WitnessForm form, List<String> faults) {
        context.status(422);
        List<String> all = new ArrayList<>(faults);
        all.add(FAULTY);
        show(context, witness, all, form.again());
    }
}
