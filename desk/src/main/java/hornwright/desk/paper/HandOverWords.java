package hornwright.desk.paper;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.job.Job;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.steps.StepState;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.paper.HandOver.Compared;
import hornwright.desk.paper.OwnerReport.Item;
import hornwright.desk.paper.OwnerReport.Section;
import hornwright.desk.units.Shown;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The finished work in words an owner understands. */
public final class HandOverWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    /** What is measured on the whole horn or at a touch and told as it was read. */
    private static final Set<ReadingKind> AS_READ = EnumSet.of(ReadingKind.TOUCH_WEIGHT, ReadingKind.LEAK);

    private final Keywork keywork;
    private final Job job;
    private final Plan plan;
    private final ReportWords words;
    /** Cups, keys and parts every step of which is signed off. */
    private final Set<String> doneWith;

    private HandOverWords(Keywork keywork, Job job, Plan plan) {
        this.keywork = keywork;
        this.job = job;
        this.plan = plan;
        this.words = new ReportWords(keywork, plan);
        this.doneWith = doneWith(plan);
    }

    /** @param recheck the day the horn is looked at again */
    public static HandOver of(Keywork keywork, Job job, Plan plan, SheetHead head, LocalDate recheck) {
        HandOverWords hand = new HandOverWords(keywork, job, plan);
        return new HandOver(
                head.title(),
                head.line(),
                hand.opening(),
                hand.words.picture(),
                hand.compared(),
                Stream.of(
                                Optional.of(hand.words.stays()),
                                Optional.of(hand.renewed()),
                                hand.toCome(),
                                Optional.of(hand.cannotBeUndone()),
                                Optional.of(hand.imperfect()),
                                Optional.of(care()),
                                Optional.of(comeBack(recheck)))
                        .flatMap(Optional::stream)
                        .toList());
    }

    private String opening() {
        long stays = words.count(place -> ReportWords.STAYS.contains(place.treatment()));
        long renewed = words.count(this::isNew);
        long toCome = words.count(this::isToCome);
        long done = plan.order().stream()
                .filter(step -> step.state() instanceof StepState.Good)
                .count();
        int steps = plan.order().size();
        return "Of %d places on this horn that carry a material or a look, %d stay and %d are renewed%s. %s"
                .formatted(
                        plan.places().size(),
                        stays,
                        renewed,
                        toCome == 0 ? "" : "; %d more are planned and not done yet".formatted(toCome),
                        done == steps
                                ? "Every step of the work is signed off."
                                : "%d of %d steps of the work are signed off.".formatted(done, steps));
    }

    private List<Compared> compared() {
        List<Compared> all = new ArrayList<>();
        keywork.cups().forEach(cup -> {
            Optional<PlannedNumber> before = heightOf(cup, NumberName.HEIGHT_BEFORE);
            Optional<PlannedNumber> after = heightOf(cup, NumberName.HEIGHT_NOW);
            boolean again = job.readings().measuredAfter(Stage.ARRIVAL, ReadingKind.FRONT_HEIGHT, cup.id());
            if (again && before.isPresent() && after.isPresent()) {
                all.add(new Compared(
                        keywork.nameOf(cup).display() + ", height at the front",
                        written(before.get()),
                        written(after.get())));
            }
        });
        for (Reading now : job.readings().current()) {
            if (AS_READ.contains(now.kind()) && now.stage() != Stage.ARRIVAL) {
                before(now).ifPresent(then -> all.add(compared(then, now)));
            }
        }
        return all;
    }

    private Optional<PlannedNumber> heightOf(Cup cup, NumberName name) {
        return Stream.concat(keywork.placesOf(cup).stream(), keywork.placesOf(new Owner.OfKey(cup.key())).stream())
                .flatMap(place -> plan.number(place.id(), name).stream())
                .findFirst();
    }

    private static String written(PlannedNumber number) {
        return Shown.of(number.value(), number.u()) + " " + number.unit();
    }

    private Optional<Reading> before(Reading now) {
        return job.readings().at(Stage.ARRIVAL).stream()
                .filter(then -> then.kind() == now.kind()
                        && then.of().equals(now.of())
                        && then.point().equals(now.point()))
                .findFirst();
    }

    private Compared compared(Reading then, Reading now) {
        String of = now.kind() == ReadingKind.LEAK
                ? "whole horn"
                : keywork.keys().get(now.of()).name().display();
        return new Compared(
                "%s, %s as read".formatted(of, now.kind().word()),
                then.observed().inWords(),
                now.observed().inWords());
    }

    /** A place is as new as the work on what it belongs to: all of it signed off, though some may want a second look. */
    private boolean isNew(PlannedPlace place) {
        return place.isRenewed() && doneWith.contains(ownerOf(place));
    }

    private boolean isToCome(PlannedPlace place) {
        return place.isRenewed() && !doneWith.contains(ownerOf(place));
    }

    private String ownerOf(PlannedPlace place) {
        return keywork.places().get(place.id()).belongsTo().id();
    }

    private static Set<String> doneWith(Plan plan) {
        Map<String, Boolean> done = new HashMap<>();
        for (PlannedStep step : plan.order()) {
            boolean signed = step.state() instanceof StepState.Good || step.state() instanceof StepState.Recheck;
            done.merge(step.step().of(), signed, Boolean::logicalAnd);
        }
        return done.entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private Section renewed() {
        List<Item> items = words.items(this::isNew);
        return new Section(
                "What is new",
                List.of(
                        items.isEmpty()
                                ? "Nothing new is signed off yet."
                                : "New material is of the kind the maker used, unless it says otherwise, and can be taken off"
                                        + " again. What came off is yours, in labelled bags."),
                items);
    }

    /** Planned work is told as planned; nothing when all of it is done. */
    private Optional<Section> toCome() {
        List<Item> items = words.items(this::isToCome);
        return items.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(
                        "Planned, not done yet",
                        List.of("This is on the plan and not on the horn: the steps for it are not signed off."),
                        items));
    }

    /** What moves or takes metal for good, as far as it was written down in the course of the work. */
    private Section cannotBeUndone() {
        List<Item> items = Stream.of(
                        lasting(
                                "level.",
                                WorkKind.HOLE_LEVELLED,
                                "Tone holes gone over and levelled where they needed it"),
                        lasting(
                                "fit.",
                                WorkKind.KEY_FITTED,
                                "Keys fitted to their rods, tubes closed where they were loose"),
                        lasting("neck", null, "Neck and tenon fitted"))
                .flatMap(Optional::stream)
                .toList();
        return new Section(
                "What cannot be undone",
                List.of(
                        items.isEmpty()
                                ? "Nothing was written down that cannot be taken back."
                                : "Metal that was moved or taken stays so. Everything else can be taken back."),
                items);
    }

    private Optional<Item> lasting(String step, @org.jspecify.annotations.Nullable WorkKind kind, String said) {
        Predicate<WorkDone> done = work -> work.kind() == kind
                || (work.kind() == WorkKind.SIGNED_OFF && work.of().startsWith(step));
        String where = job.work().stream()
                .filter(done)
                .map(work -> name(work.of().startsWith(step) ? work.of().substring(step.length()) : work.of()))
                .filter(name -> !name.isEmpty())
                .distinct()
                .collect(Collectors.joining(", "));
        return job.work().stream().noneMatch(done)
                ? Optional.empty()
                : Optional.of(new Item(said, where.isEmpty() ? "" : where + "."));
    }

    private String name(String id) {
        return keywork.keys()
                .find(id)
                .map(key -> key.name().display())
                .or(() -> keywork.cups().stream()
                        .filter(cup -> cup.hole().equals(id))
                        .map(cup -> keywork.nameOf(cup).display())
                        .findFirst())
                .orElse("");
    }

    private Section imperfect() {
        Section left = words.imperfect();
        List<Item> items = new ArrayList<>(left.items());
        List<PlannedStep> again = plan.order().stream()
                .filter(step -> step.state() instanceof StepState.Recheck)
                .toList();
        if (!again.isEmpty()) {
            items.add(new Item(
                    "Changed after it was signed off and not looked at since",
                    again.stream().map(step -> step.step().words()).limit(6).collect(Collectors.joining("; ")) + "."));
        }
        return new Section(left.heading(), left.paragraphs(), items);
    }

    /** Source: common practice. */
    private static Section care() {
        return new Section(
                "How to look after it",
                List.of("The usual care; what your teacher or this shop told you for this horn comes first."),
                List.of(
                        new Item(
                                "After playing",
                                "empty neck and bow, draw a dry cloth through, leave the case open a while."),
                        new Item(
                                "Pads",
                                "dab a moist pad dry with soft paper, no powder; a sticking G♯ is cleaned, not bent."),
                        new Item(
                                "Hold it",
                                "by body and bell, never by keys; put the neck on by its tube, not by its key."),
                        new Item("The case", "nothing in it that can press on a key; a loose reed guard is enough."),
                        new Item("Heat and frost", "no hot car, no window: adhesive softens and pads move."),
                        new Item(
                                "Oil and screws",
                                "leave them to the bench unless you were shown where and how little.")));
    }

    private static Section comeBack(LocalDate recheck) {
        return new Section(
                "When it is looked at again",
                List.of(
                        "New cork and felt settle in the first weeks. Heights and links are looked at again on %s; bring this"
                                        .formatted(DAY.format(recheck))
                                + " sheet, the figures on it are the ones to compare with."),
                List.of());
    }
}
