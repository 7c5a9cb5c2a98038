package hornwright.desk.paper;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.Warning.Sort;
import hornwright.bench.plan.origin.OriginalityStatement;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Treatment;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Standing;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.paper.OwnerReport.Item;
import hornwright.desk.paper.OwnerReport.Section;
import hornwright.desk.units.Shown;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * The plan in words an owner understands: what stays, what is replaced and why, what cannot be undone, what is left
 * imperfect, what it takes.
 */
public final class ReportWords {
    static final Set<Treatment> STAYS = EnumSet.of(Treatment.KEEP, Treatment.CLEAN, Treatment.REFIT);
    private static final int ASKED = 6;
    private static final double PICTURE_MM = 92;

    private final Keywork keywork;
    private final Plan plan;

    ReportWords(Keywork keywork, Plan plan) {
        this.keywork = keywork;
        this.plan = plan;
    }

    public static OwnerReport of(Keywork keywork, Plan plan, SheetHead head) {
        ReportWords words = new ReportWords(keywork, plan);
        return new OwnerReport(
                head.title(),
                head.line(),
                words.opening(),
                words.picture(),
                List.of(
                        words.stays(),
                        OriginWords.of(OriginalityStatement.of(keywork, plan)),
                        words.renewed(),
                        words.cannotBeUndone(),
                        words.imperfect(),
                        words.unsettled(),
                        words.toKnow(),
                        words.money(),
                        new Section(
                                "What comes back to you",
                                List.of("Every part taken off goes into a labelled bag and comes back with the horn."),
                                List.of())));
    }

    /** The horn without its words, small. */
    Figure picture() {
        Showing asItWillBe = place -> {
            String material = plan.place(place.id()).material();
            return new Showing.Shown(material == null ? place.asBuilt().material() : material, Standing.AS_BUILT);
        };
        return Figure.of(UnrolledHorn.of(keywork).picture(asItWillBe, PICTURE_MM));
    }

    private String opening() {
        long stays = count(place -> STAYS.contains(place.treatment()));
        long renewed = count(PlannedPlace::isRenewed);
        long open = count(place -> place.treatment() == Treatment.DECIDE);
        return "Of %d places on this horn that carry a material or a look, %d stay, %d are renewed%s."
                .formatted(
                        plan.places().size(),
                        stays,
                        renewed,
                        open == 0 ? "" : ", and %d are still to be looked at".formatted(open));
    }

    long count(Predicate<PlannedPlace> test) {
        return plan.places().stream().filter(test).count();
    }

    Section stays() {
        List<Item> items = items(place -> STAYS.contains(place.treatment()) && !unseen(place));
        String unseen =
                Alike.kinds(keywork, plan.places().list(), place -> STAYS.contains(place.treatment()) && unseen(place));
        List<String> said = new ArrayList<>();
        said.add(
                "What is sound and belongs to the horn stays on it. Sound resonators and rivets move to the new pads, and"
                        + " shellac stays wherever it still holds.");
        if (!unseen.isEmpty()) {
            said.add("Left alone because nobody has looked closely yet: " + unseen + ".");
        }
        return new Section("What stays", said, items);
    }

    private Section renewed() {
        List<Item> items = items(PlannedPlace::isRenewed);
        String said = items.isEmpty()
                ? "Nothing is proposed yet: too little has been looked at."
                : "New material is of the kind the maker used, unless it says otherwise. It can be taken off again.";
        return new Section("What is replaced, and why", List.of(said), items);
    }

    /** What nobody has looked at is told by its kind only: place by place it would read as if it had been judged. */
    private static boolean unseen(PlannedPlace place) {
        return place.found() == null;
    }

    List<Item> items(Predicate<PlannedPlace> test) {
        return Alike.of(keywork, plan.places().list(), test, ReportWords::reason).stream()
                .map(alike -> {
                    String which = alike.which(keywork);
                    return new Item(
                            alike.what(keywork), sentence(alike.reason()) + (which.isEmpty() ? "" : " " + which + "."));
                })
                .toList();
    }

    /** What is done and why, without naming the place that this one goes with. */
    private static String reason(PlannedPlace place) {
        String why = place.why()
                .replaceFirst("^goes with [^,;]*[,;]?\\s*", "")
                .replaceFirst("^(onto the new pad|nobody has looked)$", "");
        String done = switch (place.treatment()) {
            case KEEP, REPLACE_LIKE -> "";
            case CLEAN -> "cleaned: ";
            case REFIT -> "refitted: ";
            case SUBSTITUTE -> "another material: ";
            case MAKE -> "made new: ";
            case DECIDE -> "to be decided: ";
        };
        return why.isEmpty() ? "" : done + why;
    }

    private Section cannotBeUndone() {
        List<Item> items = new ArrayList<>();
        for (Hazard lasting : List.of(Hazard.LEVELLING, Hazard.SWEDGING, Hazard.TENON)) {
            String where = plan.places().stream()
                    .filter(place -> place.advice().stream()
                            .anyMatch(advice -> advice.cautions().contains(lasting)))
                    .map(place -> keywork.places().get(place.id()).display().replaceFirst(" pad$", ""))
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (!where.isEmpty()) {
                items.add(new Item(lasting.work(), "may be needed at " + where + "."));
            }
        }
        String said = items.isEmpty()
                ? "Nothing proposed so far. If a hinge must be closed or a hole levelled we ask first: both take or move"
                        + " metal for good."
                : "These take or move metal for good. We ask you before each of them; everything else can be taken back.";
        return new Section("What cannot be undone", List.of(said), items);
    }

    /** What stays although it is not as new, and what the horn will not lose by this work. */
    Section imperfect() {
        List<Item> items = new ArrayList<>();
        Alike.of(
                        keywork,
                        plan.places().list(),
                        this::marked,
                        place -> condition(place).word())
                .forEach(alike -> {
                    String which = alike.which(keywork);
                    items.add(new Item(
                            alike.what(keywork), alike.reason() + (which.isEmpty() ? "." : ": " + which + ".")));
                });
        warnings(sort -> sort == Sort.LINKED_SET || sort == Sort.HEIGHTS).forEach(items::add);
        String said = items.isEmpty()
                ? "Nothing found so far."
                : "This stays as it is, and you will be able to see or feel it.";
        return new Section("What is left imperfect", List.of(said), items);
    }

    private boolean marked(PlannedPlace place) {
        Condition condition = condition(place);
        return !place.isRenewed() && condition != Condition.SOUND && condition != Condition.UNKNOWN;
    }

    private static Condition condition(PlannedPlace place) {
        return place.found() == null ? Condition.UNKNOWN : place.found().condition();
    }

    private Section unsettled() {
        List<Item> items = plan.missing().stream()
                .limit(ASKED)
                .map(missing -> new Item(missing.measure(), "decides " + String.join(", ", decides(missing)) + "."))
                .toList();
        return new Section(
                "What we still have to find out",
                items.isEmpty()
                        ? List.of()
                        : List.of("These would settle most of what is open, the most telling first."),
                items);
    }

    private static List<String> decides(Missing missing) {
        return missing.decides().stream().limit(3).toList();
    }

    private Section toKnow() {
        List<Item> items = new ArrayList<>();
        together(
                Sort.KEY_FIT,
                "these keys have play in their hinges. That is mended first, and their pads may still change by a little.",
                items);
        together(Sort.PAD_FIT, "these cups lie between two pad sizes. Both are tried.", items);
        return new Section("What you should know", List.of(), items);
    }

    /** Many warnings of one sort as one line that names the keys. */
    private void together(Sort sort, String words, List<Item> items) {
        String names = plan.warnings().stream()
                .filter(warning -> warning.sort() == sort)
                .map(warning -> warning.words().replaceFirst(":.*", ""))
                .distinct()
                .collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
            items.add(new Item(names, words));
        }
    }

    private List<Item> warnings(Predicate<Sort> test) {
        return plan.warnings().stream()
                .filter(warning -> test.test(warning.sort()))
                .map(warning -> new Item(warning.sort().word(), sentence(warning.words())))
                .toList();
    }

    private Section money() {
        List<Item> items = new ArrayList<>();
        PlannedNumber hours = plan.money().hours();
        PlannedNumber cost = plan.money().cost();
        if (hours != null) {
            items.add(new Item("hours at the bench", range(hours)));
        }
        if (cost != null) {
            items.add(new Item("cost", range(cost) + " " + plan.money().currency() + ", parts included"));
        }
        return new Section(
                "What it may take",
                items.isEmpty()
                        ? List.of()
                        : List.of(
                                "A range, because some things show only after the keys are off. We ask before going over it."),
                items);
    }

    private static String range(PlannedNumber number) {
        Double low = number.low();
        Double high = number.high();
        return low != null && high != null ? "%.0f to %.0f".formatted(low, high) : Shown.of(number.value(), number.u());
    }

    private static String sentence(String words) {
        String ended = words.endsWith(".") ? words : words + ".";
        return Character.toUpperCase(ended.charAt(0)) + ended.substring(1);
    }
}
