package hornwright.desk.web.view;

import hornwright.bench.plan.NumberName;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Unit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The sheets of the measuring grid: one instrument in hand, one sort of reading, every point in bench order. */
public enum MeasureSheet {
    CUPS(
            "cups",
            "Cup diameters",
            "Inside diameter two ways with the caliper: cups are oval. Gives the pad order.",
            List.of(
                    new Column(ReadingKind.CUP_INSIDE, "along the hinge", "Along the hinge"),
                    new Column(ReadingKind.CUP_INSIDE, "across the hinge", "Across")),
            List.of(NumberName.DIAMETER, NumberName.THICKNESS)),
    HEIGHTS(
            "heights",
            "Front heights",
            "Before strip-down, with the wedge at the front edge: the edge of the hole away from the hinge.",
            List.of(new Column(
                    ReadingKind.FRONT_HEIGHT, "front edge of the hole, away from the hinge", "At the front edge")),
            List.of(NumberName.HEIGHT_TARGET, NumberName.CHANGE)),
    DEPTHS(
            "depths",
            "Cup depths",
            "Depth rod off the horn, cup floor to cup rim, where the floor is flat; a domed floor near its edge.",
            List.of(new Column(ReadingKind.CUP_DEPTH, "cup floor to cup rim", "Floor to rim")),
            List.of(NumberName.THICKNESS, NumberName.FLOAT)),
    HOLES(
            "holes",
            "Tone holes",
            "Inside diameter, the mean of two ways.",
            List.of(new Column(ReadingKind.HOLE, "inside, two ways, mean", "Inside")),
            List.of(NumberName.OVER_HOLE, NumberName.FRONT_GAP_IF_PROUD)),
    ARMS(
            "arms",
            "Axis to centre",
            "Rule from the hinge axis to the middle of the cup.",
            List.of(new Column(ReadingKind.AXIS_TO_CENTRE, "hinge axis to cup centre", "Axis to centre")),
            List.of(NumberName.RATIO, NumberName.FRONT_GAP_IF_PROUD)),
    OLD_MATERIAL(
            "old-material",
            "Old cork and felt",
            "Thickness of what comes off the key. Old material is packed: it was at least so thick.",
            List.of(new Column(ReadingKind.THICKNESS, "", "Thickness")),
            List.of(NumberName.CUT_FULL, NumberName.CHANGE)),
    TOUCHES(
            "touches",
            "Touch weights",
            "The least that does its work, shuts all it shuts or lifts what it lifts, at the middle of the touch; newtons, or grams with a g.",
            List.of(new Column(ReadingKind.TOUCH_WEIGHT, "middle of the touch", "Weight")),
            List.of()),
    PLAY(
            "play",
            "Play",
            "By feel, across the rod and then along it: none, felt, clear or loose, like: clear, felt. Only the bad ones matter.",
            List.of(new Column(ReadingKind.PLAY, "at the hinge tube", "Across, along")),
            List.of(NumberName.PLAY_SHIFT, NumberName.PLAY_TILT)),
    RIMS(
            "rims",
            "Rim gaps",
            "The worst gap under a flat disc and where it is by the clock, 12 away from the hinge, like: 0.08 at 4.",
            List.of(new Column(ReadingKind.RIM_GAP, "under a flat disc", "Gap at clock")),
            List.of(NumberName.RIM_GAP)),
    TRIALS(
            "trials",
            "Trial pads",
            "A dry stack of known thickness, let down lightly: where it touches first and the feeler opposite, like: 4.4 back 0.27, or: 4.4 level.",
            List.of(new Column(
                    ReadingKind.TRIAL_PAD, "dry stack of stated thickness, no adhesive", "Stack, first touch, feeler")),
            List.of(NumberName.PROUD, NumberName.THICKNESS)),
    STAMPS(
            "stamps",
            "Stamped numbers",
            "As they stand on the metal; the quickest proof that parts belong together.",
            List.of(new Column(ReadingKind.STAMP, "", "Stamped")),
            List.of()),
    LEAK(
            "leak",
            "Total leak",
            "All keys shut, neck off; a total hides where, so try every site as well.",
            List.of(new Column(ReadingKind.LEAK, "", "Leak")),
            List.of());

    /** One sort of reading on the sheet. */
    public record Column(ReadingKind kind, String point, String heading) {}

    private final String word;
    private final String title;
    private final String how;
    private final List<Column> columns;
    private final List<NumberName> results;

    MeasureSheet(String word, String title, String how, List<Column> columns, List<NumberName> results) {
        this.word = word;
        this.title = title;
        this.how = how;
        this.columns = columns;
        this.results = results;
    }

    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    public String how() {
        return how;
    }

    public List<Column> columns() {
        return columns;
    }

    /** Whether its fields hold more than a number. */
    public boolean wordy() {
        return columns.stream().anyMatch(column -> column.kind().says() != Observed.Amount.class);
    }

    /** Whether any of its fields takes a length, so that its unit may be chosen. */
    public boolean takesLengths() {
        return columns.stream().anyMatch(column -> column.kind().unit() == Unit.MILLIMETRE);
    }

    /** The headings of its fields, with the unit a bare number is in; {@code length} is that of lengths. */
    public List<String> headings(String length) {
        return columns.stream()
                .map(column -> column.heading() + unit(column.kind(), length))
                .toList();
    }

    private static String unit(ReadingKind kind, String length) {
        Unit unit = kind.unit();
        if (unit == null || kind.says() != Observed.Amount.class) {
            return "";
        }
        return ", " + (unit == Unit.MILLIMETRE ? length : unit.symbol());
    }

    /** What the plan makes of it, shown in the same row. */
    public List<NumberName> results() {
        return results;
    }

    public static MeasureSheet named(@Nullable String word) {
        return Arrays.stream(values())
                .filter(sheet -> sheet.word.equals(word))
                .findFirst()
                .orElse(CUPS);
    }

    /** The sheet a reading of that kind is typed on; null when it is typed elsewhere. */
    public static @Nullable MeasureSheet ofKind(@Nullable ReadingKind kind) {
        return Arrays.stream(values())
                .filter(sheet -> sheet.columns.stream().anyMatch(column -> column.kind() == kind))
                .findFirst()
                .orElse(null);
    }
}
