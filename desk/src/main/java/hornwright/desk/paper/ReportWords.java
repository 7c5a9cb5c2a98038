package hornwright.desk.paper;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.Warning;
import hornwright.bench.survey.Treatment;
import hornwright.desk.paper.OwnerReport.Item;
import hornwright.desk.paper.OwnerReport.Section;
import hornwright.desk.units.Shown;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** The plan in words an owner understands: what stays, what is replaced and why, what cannot be undone, what it takes. */
public final class ReportWords {
    private static final Set<Treatment> STAYS = Set.of(Treatment.KEEP, Treatment.CLEAN, Treatment.REFIT);
    private static final int NAMED = 6;
    private static final int ASKED = 6;

    private final Keywork keywork;
    private final Plan plan;

    private ReportWords(Keywork keywork, Plan plan) {
        this.keywork = keywork;
        this.plan = plan;
    }

    public static OwnerReport of(Keywork keywork, Plan plan, SheetHead head) {
        ReportWords words = new ReportWords(keywork, plan);
        return new OwnerReport(
                head.title(),
                head.line(),
                words.opening(),
                List.of(
                        new Section("What stays", words.unlooked(), words.items(ReportWords::staysAfterALook)),
                        new Section("What is renewed", List.of(), words.items(PlannedPlace::isRenewed)),
                        words.unsettled(),
                        words.cannotBeUndone(),
                        words.toKnow(),
                        words.money(),
                        new Section(
                                "What comes back to you",
                                List.of("Every part taken off goes into a labelled bag and comes back with the horn."),
                                List.of())));
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

    private static boolean staysAfterALook(PlannedPlace place) {
        return place.found() != null && STAYS.contains(place.treatment());
    }

    /** What nobody has looked at is not listed place by place: it would read as if it had been judged. */
    private List<String> unlooked() {
        long unlooked = count(place -> place.found() == null && STAYS.contains(place.treatment()));
        return unlooked == 0
                ? List.of()
                : List.of(
                        "%d places nobody has looked at yet stay as they are until somebody does.".formatted(unlooked));
    }

    private long count(Predicate<PlannedPlace> test) {
        return plan.places().stream().filter(test).count();
    }

    /** One item for each kind of place, treatment and material, so that two dozen pads are one line. */
    private List<Item> items(Predicate<PlannedPlace> test) {
        Map<String, List<PlannedPlace>> alike = new LinkedHashMap<>();
        plan.places().stream()
                .filter(test)
                .forEach(place -> alike.computeIfAbsent(
                                kindOf(place) + "|" + place.treatment().word() + "|" + place.material() + "|"
                                        + place.why(),
                                none -> new ArrayList<>())
                        .add(place));
        return alike.values().stream().map(this::item).toList();
    }

    private Item item(List<PlannedPlace> alike) {
        PlannedPlace first = alike.getFirst();
        List<String> names =
                alike.stream().map(place -> nameOf(place)).limit(NAMED).toList();
        String rest = alike.size() > NAMED ? " and %d more".formatted(alike.size() - NAMED) : "";
        String material = first.material() == null ? "" : ", " + first.material();
        String name = alike.size() == 1
                ? names.getFirst()
                : "%d × %s".formatted(alike.size(), kindOf(first).spoken());
        String which = alike.size() == 1 ? "" : String.join(", ", names) + rest + ". ";
        return new Item(name + material, which + sentence(first.treatment().word() + ": " + first.why()));
    }

    private Section unsettled() {
        List<Item> items = plan.missing().stream()
                .limit(ASKED)
                .map(missing -> new Item(missing.measure(), "decides " + String.join(", ", decides(missing))))
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

    private Section cannotBeUndone() {
        List<Item> items = new ArrayList<>();
        for (Hazard lasting : List.of(Hazard.LEVELLING, Hazard.SWEDGING, Hazard.TENON)) {
            List<String> where = plan.places().stream()
                    .filter(place -> place.advice().stream()
                            .anyMatch(advice -> advice.cautions().contains(lasting)))
                    .map(this::nameOf)
                    .limit(NAMED)
                    .toList();
            if (!where.isEmpty()) {
                items.add(new Item(lasting.work(), "may be needed at " + String.join(", ", where)));
            }
        }
        return new Section(
                "What cannot be undone",
                List.of(
                        items.isEmpty()
                                ? "Nothing proposed so far. If a hinge must be closed or a hole levelled we ask first: both take or move metal for good."
                                : "We ask you before each of these; everything else can be taken back."),
                items);
    }

    private Section toKnow() {
        return new Section(
                "What you should know",
                List.of(),
                plan.warnings().stream()
                        .filter(warning -> warning.sort() != Warning.Sort.STOCK && warning.sort() != Warning.Sort.STALE)
                        .map(warning -> new Item(warning.sort().word(), sentence(warning.words())))
                        .toList());
    }

    private Section money() {
        List<Item> items = new ArrayList<>();
        PlannedNumber hours = plan.money().hours();
        PlannedNumber cost = plan.money().cost();
        if (hours != null) {
            items.add(new Item("Hours at the bench", range(hours)));
        }
        if (cost != null) {
            items.add(new Item("Cost", range(cost) + " " + plan.money().currency() + ", parts included"));
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

    private PlaceKind kindOf(PlannedPlace place) {
        return keywork.places().get(place.id()).kind();
    }

    private String nameOf(PlannedPlace place) {
        Place known = keywork.places().get(place.id());
        return known.display();
    }

    private static String sentence(String words) {
        String ended = words.endsWith(".") ? words : words + ".";
        return ended.isEmpty() ? ended : Character.toUpperCase(ended.charAt(0)) + ended.substring(1);
    }
}
