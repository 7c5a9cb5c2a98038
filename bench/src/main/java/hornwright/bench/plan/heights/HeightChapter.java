package hornwright.bench.plan.heights;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.HeightPoint;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Decision;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Answers for the height of one cup. */
public final class HeightChapter {
    private final HeightQuestion ask;
    private final Reasons reasons = new Reasons();
    private final Map<NumberName, PlannedNumber> heights = new LinkedHashMap<>();
    private final CupGeometry geometry;

    private HeightChapter(HeightQuestion ask) {
        this.ask = ask;
        this.geometry = CupGeometry.of(ask.keywork(), ask.cup(), ask.holes(), ask.arms(), ask.rules(), reasons);
    }

    public static HeightAnswer answer(HeightQuestion ask) {
        return new HeightChapter(ask).answer();
    }

    private HeightAnswer answer() {
        before().ifPresent(height -> heights.put(NumberName.HEIGHT_BEFORE, height.at(HeightPoint.FRONT)));
        PlannedNumber now = now();
        if (now != null) {
            heights.put(NumberName.HEIGHT_NOW, now.at(HeightPoint.FRONT));
        }
        PlannedNumber target = target();
        heights.put(NumberName.HEIGHT_TARGET, target.at(HeightPoint.FRONT));
        heights.put(NumberName.HEIGHT_CENTRE, centre(target).at(HeightPoint.CENTRE));
        LayerNow adjusted = ask.adjusted();
        Map<NumberName, PlannedNumber> foot = Map.of();
        if (adjusted != null) {
            FootSize size = new FootSize(ask, adjusted, geometry, reasons);
            foot = size.numbers(now, target);
            heights.put(NumberName.HEIGHT_SETTLED, size.settled(target, foot).at(HeightPoint.FRONT));
        }
        return new HeightAnswer(
                ask.cup().id(),
                ask.pad(),
                heights,
                adjusted == null ? null : adjusted.layer().place(),
                foot,
                reasons.table());
    }

    private Optional<PlannedNumber> before() {
        return new ReadNumbers(ask.rules(), reasons)
                .mean(ask.pad() + "/heightBefore", "mean of the front heights read before strip-down", ask.before());
    }

    /** A centre height is carried to the front edge, which opens further: x (arm + hole / 2) / arm. */
    private @Nullable PlannedNumber now() {
        ReadNumbers read = new ReadNumbers(ask.rules(), reasons);
        return read.mean(ask.pad() + "/heightNow", "mean of the front heights read", ask.fronts())
                .or(() -> read.mean(ask.pad() + "/centreNow", "mean of the centre heights read", ask.centres())
                        .map(centre -> reasons.derive(
                                ask.pad() + "/heightNow",
                                "centre height x (axis to centre + hole / 2) / axis to centre",
                                "mm",
                                in -> in[0] * (in[2] + in[1] / 2) / in[2],
                                Because.Input.of("centre height", centre),
                                geometry.holeInput(),
                                geometry.armInput())))
                .orElse(null);
    }

    /** What a person decided, else the factory's height. */
    private PlannedNumber target() {
        Decision.Height decided = ask.decided();
        if (decided != null) {
            String why = decided.why().isBlank() ? "" : ": " + decided.why();
            Because.Leaf leaf = new Because.Decided(
                    "decided height of " + ask.cup().id(), "front height settled by a person" + why);
            return reasons.leaf(leaf, decided.frontMm(), "mm", 0);
        }
        return CupGeometry.pattern(
                reasons,
                ask.rules(),
                ask.keywork(),
                "front height " + ask.cup().hole(),
                ask.cup().heightFrontMm(),
                "height.from-pattern_mm");
    }

    private PlannedNumber centre(PlannedNumber front) {
        return reasons.derive(
                ask.pad() + "/heightCentre",
                "front height x axis to centre / (axis to centre + hole / 2)",
                "mm",
                in -> in[0] * in[2] / (in[2] + in[1] / 2),
                Because.Input.of("front height", front),
                geometry.holeInput(),
                geometry.armInput());
    }
}
