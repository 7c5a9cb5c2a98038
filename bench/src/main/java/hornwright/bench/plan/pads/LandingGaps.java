package hornwright.bench.plan.pads;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import java.util.Map;

/**
 * The gap a wrong pad stack opens, by exact hinge geometry. A stack proud by t touches at the back, (arm - r) from the
 * hinge, and leaves t d / (arm - r) at the front; one shy by t touches at the front and leaves t d / (arm + r) at the
 * back. Proud is the worse of the two.
 */
final class LandingGaps {
    private static final double STEP_MM = 0.1;

    private final PadQuestion ask;
    private final CupGeometry geometry;
    private final Reasons reasons;

    LandingGaps(PadQuestion ask, CupGeometry geometry, Reasons reasons) {
        this.ask = ask;
        this.geometry = geometry;
        this.reasons = reasons;
    }

    void put(Map<NumberName, PlannedNumber> numbers) {
        PlannedNumber step = reasons.leaf(
                new Because.CommonPractice("a tenth of a millimetre", "the step pads are told apart by"),
                STEP_MM,
                "mm",
                0);
        Because.Input off = Because.Input.of("off by", step);
        numbers.put(
                NumberName.FRONT_GAP_IF_PROUD,
                reasons.derive(
                        ask.place() + "/frontGapIfProud",
                        "too proud touches at the back: gap at the front = off x hole / (axis to centre - hole / 2)",
                        "mm",
                        in -> front(in[0], in[1], in[2]),
                        off,
                        geometry.holeInput(),
                        geometry.armInput()));
        numbers.put(
                NumberName.BACK_GAP_IF_SHY,
                reasons.derive(
                        ask.place() + "/backGapIfShy",
                        "too shy touches at the front: gap at the back = off x hole / (axis to centre + hole / 2)",
                        "mm",
                        in -> back(in[0], in[1], in[2]),
                        off,
                        geometry.holeInput(),
                        geometry.armInput()));
    }

    /** Front gap of a stack proud by t. */
    static double front(double proud, double hole, double arm) {
        return proud * hole / (arm - hole / 2);
    }

    /** Back gap of a stack shy by t. */
    static double back(double shy, double hole, double arm) {
        return shy * hole / (arm + hole / 2);
    }

    /** How proud a stack stands whose front gap is g. */
    static double proud(double frontGap, double hole, double arm) {
        return frontGap * (arm - hole / 2) / hole;
    }

    /** How proud (so negative) a stack stands whose back gap is g. */
    static double shy(double backGap, double hole, double arm) {
        return -backGap * (arm + hole / 2) / hole;
    }
}
