package hornwright.desk.web.view;

import hornwright.bench.plan.NumberName;
import hornwright.bench.survey.ReadingKind;
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
            "The least that moves the key, at the middle of the touch; newtons, or grams with a g.",
            List.of(new Column(ReadingKind.TOUCH_WEIGHT, "middle of the touch", "Weight")),
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
