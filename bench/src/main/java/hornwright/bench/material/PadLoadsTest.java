package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;
import java.util.ArrayList;
import java.util.List;

/**
 * A pad laid on a ring under two or three weights, one after the other heavier: how high its back stands without and with each.
 * The lightest is carried by the skin, the others by the felt. Two weights take where the felt begins from the table; three
 * tell that too.
 *
 * @param material the class of pad: "soft", "medium", "firm"
 * @param ringMm diameter of the ring, mean of inside and outside
 * @param loads weight and height, lightest first
 * @param thicknessU one standard uncertainty of each height, mm
 */
public record PadLoadsTest(String material, double ringMm, double freeMm, List<Load> loads, double thicknessU)
        implements BenchTest {
    private static final double NEWTONS_PER_GRAM = 9.80665e-3;
    private static final double TOLD_APART = 2;

    /** A weight, and how high the back of the pad stands under it. */
    public record Load(double massG, double heightMm) {}

    /** Skin and felt in MPa, and how far the skin gives before the felt takes over, mm. */
    private record Lines(double skin, double felt, double from) {
        double of(Property property) {
            return switch (property) {
                case FELT -> felt;
                case FELT_FROM -> from;
                default -> skin;
            };
        }
    }

    public PadLoadsTest {
        loads = List.copyOf(loads);
        if (!(ringMm > 0) || !(freeMm > 0) || !(thicknessU > 0) || loads.size() < 2 || loads.size() > 3) {
            throw new IllegalArgumentException("ring, height and its uncertainty are above zero; two or three weights");
        }
        for (Load load : loads) {
            if (!(load.massG() > 0) || !(load.heightMm() > 0)) {
                throw new IllegalArgumentException("weights and heights are above zero");
            }
        }
    }

    /** Slopes between the readings; each reading moved by its uncertainty in turn, differences added by their squares. */
    @Override
    public Outcome<List<Fit>> fits(Materials materials) {
        double apart = TOLD_APART * Math.sqrt(2) * thicknessU;
        double above = freeMm;
        double lighter = 0;
        for (Load load : loads) {
            if (above - load.heightMm() < apart || load.massG() <= lighter) {
                return Outcome.missing(
                        "weights further apart: each height must be lower than the last by more than the gauge errs");
            }
            above = load.heightMm();
            lighter = load.massG();
        }
        Cell from = materials.cell(material, Property.FELT_FROM);
        double[] heights = heights();
        Lines lines = lines(heights, from.value());
        if (!bends(lines, heights, from)) {
            return Outcome.missing(
                    "other weights: over these the pad gives in one line; the lightest alone tells its skin");
        }
        if (freeMm - heights[1] > lines.from()) {
            return Outcome.missing("a lighter first weight: the felt has taken over under it");
        }
        List<Fit> fits = new ArrayList<>();
        for (Property property : loads.size() == 2
                ? List.of(Property.SEAT, Property.FELT)
                : List.of(Property.SEAT, Property.FELT, Property.FELT_FROM)) {
            fits.add(new Fit(material, property, lines.of(property), doubt(property, heights, from), inWords()));
        }
        return Outcome.of(List.copyOf(fits), "weights on a ring");
    }

    /** Whether the felt is stiffer than the skin by more than the readings err, and was reached. */
    private boolean bends(Lines lines, double[] heights, Cell from) {
        double doubt = Math.hypot(doubt(Property.SEAT, heights, from), doubt(Property.FELT, heights, from));
        return lines.from() > 0
                && heights[0] - heights[heights.length - 1] > lines.from()
                && lines.felt() - lines.skin() > TOLD_APART * doubt;
    }

    private double[] heights() {
        double[] heights = new double[loads.size() + 1];
        heights[0] = freeMm;
        for (int i = 0; i < loads.size(); i++) {
            heights[i + 1] = loads.get(i).heightMm();
        }
        return heights;
    }

    /** Pressure is force for each millimetre of rim, N/mm. */
    private double pressure(int load) {
        return loads.get(load).massG() * NEWTONS_PER_GRAM / (Math.PI * ringMm);
    }

    private Lines lines(double[] heights, double tableFrom) {
        double given = heights[0] - heights[1];
        double skin = pressure(0) / given;
        int last = loads.size() - 1;
        double deepest = heights[0] - heights[last + 1];
        if (loads.size() == 2) {
            return new Lines(skin, (pressure(1) - skin * tableFrom) / (deepest - tableFrom), tableFrom);
        }
        double middle = heights[0] - heights[2];
        double felt = (pressure(2) - pressure(1)) / (deepest - middle);
        return new Lines(skin, felt, (pressure(1) - felt * middle) / (skin - felt));
    }

    private double doubt(Property property, double[] heights, Cell from) {
        double squares = 0;
        double value = lines(heights, from.value()).of(property);
        for (int i = 0; i < heights.length; i++) {
            double[] moved = heights.clone();
            moved[i] += thicknessU;
            double off = lines(moved, from.value()).of(property) - value;
            squares += off * off;
        }
        if (loads.size() == 2) {
            double off = lines(heights, from.value() + from.u()).of(property) - value;
            squares += off * off;
        }
        return Math.sqrt(squares);
    }

    @Override
    public String inWords() {
        StringBuilder words =
                new StringBuilder("%s pad on a ring of %s mm: %s mm free".formatted(material, ringMm, freeMm));
        loads.forEach(load -> words.append(", %s mm under %s g".formatted(load.heightMm(), load.massG())));
        return words.toString();
    }
}
