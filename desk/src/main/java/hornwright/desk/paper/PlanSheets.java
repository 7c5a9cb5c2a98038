package hornwright.desk.paper;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.Warning;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.desk.drawing.PadMap;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Standing;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.paper.BenchSheet.HeightLine;
import hornwright.desk.paper.BenchSheet.RegulationLine;
import hornwright.desk.units.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The plan of a horn laid out for the bench: what the mat and the bench sheet show. */
public final class PlanSheets {
    private static final String OPEN = "not known yet";

    private static final double MAP_WIDTH_MM = 168;

    private final Keywork keywork;
    private final Plan plan;
    private final SheetHead head;
    private final RodNames rods;

    public PlanSheets(Keywork keywork, Plan plan, SheetHead head) {
        this.keywork = keywork;
        this.plan = plan;
        this.head = head;
        this.rods = new RodNames(keywork);
    }

    /** Every pad whose diameter is known, in the order the keys come off. */
    public LayoutMat mat() {
        List<MatDisc> discs = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        plan.removal()
                .forEach(removal -> removal.keys().stream()
                        .flatMap(key -> keywork.cupOf(keywork.keys().get(key)).stream())
                        .forEach(cup -> disc(cup, rods.of(removal.rod()))
                                .ifPresentOrElse(
                                        discs::add,
                                        () -> unknown.add(keywork.nameOf(cup).display()))));
        return new LayoutMat(head.title(), discs, unknown);
    }

    public BenchSheet bench() {
        return new BenchSheet(head.title(), head.line(), map(), heightLines(), regulationLines(), provisional());
    }

    /** The unrolled horn as it will be, with each pad's size beside its cup. */
    private Figure map() {
        Showing planned = place -> {
            PlannedPlace will = plan.place(place.id());
            String material = will.material() == null ? place.asBuilt().material() : will.material();
            return new Showing.Shown(material, Standing.AS_BUILT);
        };
        return Figure.of(PadMap.of(UnrolledHorn.of(keywork), planned, this::padNote, MAP_WIDTH_MM));
    }

    private List<String> padNote(Cup cup) {
        PlannedPlace pad = pad(cup);
        String diameter = pad.number(NumberName.DIAMETER).map(PlanSheets::shown).orElse("diameter " + OPEN);
        String name = keywork.nameOf(cup).display() + (isProvisional(cup) ? " *" : "");
        return Stream.of(name, diameter, thickness(pad) + " thick", middle(cup))
                .filter(line -> !line.isBlank())
                .toList();
    }

    private Optional<MatDisc> disc(Cup cup, String rod) {
        return pad(cup).number(NumberName.DIAMETER)
                .map(diameter -> new MatDisc(
                        keywork.nameOf(cup).display(),
                        rod,
                        diameter.value(),
                        keywork.holeOf(cup).diameterMm(),
                        thickness(pad(cup))));
    }

    private List<HeightLine> heightLines() {
        List<HeightLine> lines = new ArrayList<>();
        for (Cup cup : keywork.cups()) {
            Key key = keywork.keyOf(cup);
            String foot = key.stop().layers().isEmpty()
                    ? ""
                    : key.stop().layers().getFirst().place();
            Optional<PlannedNumber> target = heightOf(cup, NumberName.HEIGHT_TARGET);
            if (target.isPresent()) {
                lines.add(new HeightLine(
                        keywork.nameOf(cup).display(),
                        heightOf(cup, NumberName.HEIGHT_BEFORE)
                                .map(PlanSheets::shown)
                                .orElse(""),
                        shown(target.get()),
                        footWords(foot)));
            }
        }
        return lines;
    }

    private List<RegulationLine> regulationLines() {
        return plan.order().stream()
                .map(PlannedStep::step)
                .filter(step -> step.stage() == Stage.REGULATED && !step.of().isEmpty())
                .map(step -> new RegulationLine(
                        step.words().replaceFirst("^Regulate where ", ""), howFor(step.of()), recheckAfter(step.id())))
                .toList();
    }

    /** The keys whose hinges come first, as one line. */
    private List<String> provisional() {
        String keys = plan.warnings().stream()
                .filter(warning -> warning.sort() == Warning.Sort.KEY_FIT)
                .map(warning -> warning.words().replaceFirst(":.*", ""))
                .distinct()
                .collect(Collectors.joining(", "));
        return keys.isEmpty()
                ? List.of()
                : List.of("Key fit first: " + keys + ". Until then their pads are provisional (marked *).");
    }

    private boolean isProvisional(Cup cup) {
        return pad(cup).provisional() != null;
    }

    /** A height is planned where the key stops, or at the pad; whichever place carries it. */
    private Optional<PlannedNumber> heightOf(Cup cup, NumberName name) {
        Key key = keywork.keyOf(cup);
        return plan.number("pad." + cup.hole(), name)
                .or(() -> key.stop().layers().stream()
                        .flatMap(layer -> plan.number(layer.place(), name).stream())
                        .findFirst());
    }

    private String footWords(String place) {
        return plan.places().find(place).map(this::footWords).orElse("");
    }

    private String footWords(PlannedPlace foot) {
        return foot.number(NumberName.CUT_FULL)
                .filter(cut -> foot.isRenewed())
                .map(cut -> contactWords(foot) + ", cut full at " + Shown.value(cut.value(), 0))
                .orElse(contactWords(foot));
    }

    /** "new natural cork", "woven wool felt, keep". */
    private static String contactWords(PlannedPlace place) {
        String material = place.material() == null ? "" : place.material();
        if (place.treatment() == Treatment.REPLACE_LIKE) {
            return ("new " + material).strip();
        }
        String done = place.treatment().spoken();
        return material.isEmpty() ? done : material + ", " + done;
    }

    private String howFor(String link) {
        return keywork.links().find(link).stream()
                .flatMap(found -> found.layers().stream())
                .flatMap(layer -> plan.places().find(layer.place()).stream())
                .findFirst()
                .map(PlanSheets::contactWords)
                .map(words -> Stream.concat(Stream.of(words), plan.link(link).map(ContactWords::onPaper).stream())
                        .filter(word -> !word.isEmpty())
                        .collect(Collectors.joining("; ")))
                .orElse("");
    }

    private String recheckAfter(String step) {
        List<String> words = plan.order().stream()
                .map(PlannedStep::step)
                .filter(other -> other.stage() == Stage.REGULATED && !other.of().isEmpty())
                .filter(other -> !other.id().equals(step) && sharesWith(other.id(), step))
                .map(other -> linkWords(other.of()))
                .toList();
        return String.join(", ", words);
    }

    /** Two links are heard together when one key takes part in both. */
    private boolean sharesWith(String one, String other) {
        return keywork.links().find(linkOf(one)).stream()
                .anyMatch(a -> keywork.links().find(linkOf(other)).stream()
                        .anyMatch(b -> a.driver().equals(b.follower())
                                || a.follower().equals(b.driver())
                                || a.follower().equals(b.follower())));
    }

    private static String linkOf(String step) {
        return "link." + step.replaceFirst("^regulate\\.", "");
    }

    private String linkWords(String link) {
        return keywork.links()
                .find(link)
                .map(found -> keywork.keys().get(found.driver()).name().display() + " to "
                        + keywork.keys().get(found.follower()).name().display())
                .orElse(link);
    }

    private PlannedPlace pad(Cup cup) {
        return plan.place("pad." + cup.hole());
    }

    private String middle(Cup cup) {
        for (String kind : List.of("resonator.", "rivet.", "pad-centre.")) {
            Optional<PlannedPlace> place = plan.places().find(kind + cup.hole());
            if (place.isPresent()) {
                String word = kind.replace(".", "").replace('-', ' ');
                String size = place.get()
                        .number(NumberName.DIAMETER)
                        .map(number -> " " + shown(number))
                        .orElse("");
                return kind.startsWith("pad") ? bareOr(place.get().material()) : word + size;
            }
        }
        return "";
    }

    private static String bareOr(@Nullable String material) {
        return material == null || material.equals("none") ? "bare" : material;
    }

    private static String thickness(PlannedPlace pad) {
        return pad.number(NumberName.THICKNESS)
                .map(number -> number.low() != null && number.high() != null
                        ? Shown.window(number.low(), number.high())
                        : shown(number))
                .orElse(OPEN);
    }

    private static String shown(PlannedNumber number) {
        return Shown.of(number.value(), number.u());
    }
}
