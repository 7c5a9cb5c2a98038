package hornwright.bench.bounce;

import hornwright.bench.material.Cell;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.material.Sheet;
import hornwright.bench.rules.Rule;
import hornwright.bench.settling.KeySettling;
import hornwright.engines.action.Action;
import hornwright.engines.action.ActionResult;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/**
 * One key let go, with what is not known about it carried through: every typical figure is moved down and up by its
 * uncertainty, one at a time, and the larger differences are added by their squares.
 *
 * @param opening ms until its foot touches
 * @param rebound mm the cup first comes back by, 0 if it does not
 * @param settled ms until it is quiet
 * @param stands the figures the answer stands on
 */
public record KeyBounce(String key, Figure opening, Figure rebound, Figure settled, List<String> stands) {
    private static final double BOUNCES = 0.1;
    private static final double SURE = 2;
    private static final double MILLI = 1e3;

    /** A stiffness moved below nothing stops here. */
    private static final double LEAST_SHARE = 0.05;

    private static final List<Property> MOVED = List.of(Property.MODULUS, Property.EXPONENT, Property.RESTITUTION);

    public KeyBounce {
        stands = List.copyOf(stands);
    }

    /** A value and one standard uncertainty. */
    public record Figure(double value, double u) {}

    /** What can be said of it: the first rebound against a tenth of a millimetre, at two standard uncertainties. */
    public enum Verdict {
        BOUNCES,
        QUIET,
        CANNOT_BE_SAID
    }

    /** Empty if the key does not reach its stop or never rests there. */
    public static Optional<KeyBounce> of(OpeningKey key, Materials materials) {
        if (key.cushion().isEmpty()) {
            return Optional.empty();
        }
        Optional<double[]> middle = figures(key, materials);
        if (middle.isEmpty()) {
            return Optional.empty();
        }
        double[] square = new double[3];
        for (List<double[]> pair : moved(key, materials)) {
            for (int i = 0; i < 3; i++) {
                int figure = i;
                double off = pair.stream()
                        .mapToDouble(moved -> Math.abs(moved[figure] - middle.get()[figure]))
                        .max()
                        .orElse(0);
                square[i] += off * off;
            }
        }
        return Optional.of(new KeyBounce(
                key.key().id(),
                new Figure(middle.get()[0], Math.sqrt(square[0])),
                new Figure(middle.get()[1], Math.sqrt(square[1])),
                new Figure(middle.get()[2], Math.sqrt(square[2])),
                stands(key, materials)));
    }

    public Verdict verdict() {
        if (rebound.value() - SURE * rebound.u() >= BOUNCES) {
            return Verdict.BOUNCES;
        }
        return rebound.value() + SURE * rebound.u() < BOUNCES ? Verdict.QUIET : Verdict.CANNOT_BE_SAID;
    }

    /** The answers with each figure moved down and up. */
    private static List<List<double[]>> moved(OpeningKey key, Materials materials) {
        List<List<double[]>> all = new ArrayList<>();
        for (String material : materialsOf(key)) {
            for (Property property : MOVED) {
                Cell cell = materials.cell(material, property);
                all.add(pair(way -> figures(key, materials.instead(shifted(cell, way)))));
            }
        }
        Rule arm = materials.rules().get("bounce.arm-share");
        Rule rub = materials.rules().get("bounce.friction-share");
        Rule foot = KeySettling.area(key.key().stop(), materials.rules());
        all.add(pair(way -> figures(key.with(off(foot, way), arm.value(), rub.value()), materials)));
        all.add(pair(way -> figures(key.with(foot.value(), off(arm, way), rub.value()), materials)));
        all.add(pair(way -> figures(key.with(foot.value(), arm.value(), off(rub, way)), materials)));
        return all;
    }

    private static List<double[]> pair(IntFunction<Optional<double[]>> answer) {
        return Stream.of(-1, 1).flatMap(way -> answer.apply(way).stream()).toList();
    }

    private static double off(Rule rule, int way) {
        return Math.clamp(rule.value() + way * rule.u(), rule.least(), rule.most());
    }

    private static Cell shifted(Cell cell, int way) {
        double moved = Math.max(cell.value() + way * cell.u(), LEAST_SHARE * cell.value());
        return new Cell(cell.material(), cell.property(), moved, cell.u(), cell.standing(), cell.because());
    }

    private static Optional<double[]> figures(OpeningKey key, Materials materials) {
        ActionResult result = Action.reckon(key.input(materials, null));
        Double opening = result.opening();
        Double settled = result.settled();
        if (opening == null || settled == null) {
            return Optional.empty();
        }
        double rebound =
                result.rebounds().isEmpty() ? 0 : result.rebounds().getFirst().height();
        return Optional.of(new double[] {MILLI * opening, MILLI * rebound, MILLI * settled});
    }

    private static Set<String> materialsOf(OpeningKey key) {
        Set<String> names = new LinkedHashSet<>();
        key.cushion().sheets().stream().map(Sheet::material).forEach(names::add);
        return names;
    }

    private static List<String> stands(OpeningKey key, Materials materials) {
        List<String> lines = new ArrayList<>();
        for (String material : materialsOf(key)) {
            for (Property property : MOVED) {
                Cell cell = materials.cell(material, property);
                lines.add("%s, %s: %s ± %s, %s"
                        .formatted(
                                material,
                                property.word(),
                                cell.value(),
                                cell.u(),
                                cell.standing().word()));
            }
        }
        for (String id : List.of("bounce.arm-share", "bounce.friction-share")) {
            Rule rule = materials.rules().get(id);
            lines.add("%s: %s, %s".formatted(rule.says(), rule.value(), rule.label()));
        }
        return lines;
    }
}
