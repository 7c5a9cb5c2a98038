package hornwright.bench.plan.heights;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rest;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Chapter;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.Warning;
import hornwright.bench.rules.ShopRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Heights along a stack step evenly (common practice). Each is held against the straight line through the others; the one
 * furthest off, if it is off by more than the shop lets pass and more than twice its own uncertainty, is the odd one out.
 */
public final class StackSteps {
    private static final int FEWEST = 3;

    /** One open cup of a stack, by its turn from the lower end. */
    private record Step(int turn, Cup cup, PlannedNumber height) {}

    private record Off(Step step, PlannedNumber by) {}

    private final Keywork keywork;
    private final ShopRules rules;
    private final Reasons reasons = new Reasons();
    private final Map<String, Map<NumberName, PlannedNumber>> numbers = new LinkedHashMap<>();
    private final List<Warning> warnings = new ArrayList<>();

    private StackSteps(Keywork keywork, ShopRules rules) {
        this.keywork = keywork;
        this.rules = rules;
    }

    /** @param answers by cup id */
    public static Chapter of(Keywork keywork, ShopRules rules, Map<String, HeightAnswer> answers) {
        StackSteps steps = new StackSteps(keywork, rules);
        steps.along(KeyGroup.LOWER_STACK, answers);
        steps.along(KeyGroup.UPPER_STACK, answers);
        return new Chapter("stack steps", steps.numbers, Map.of(), steps.warnings, steps.reasons.table());
    }

    private void along(KeyGroup group, Map<String, HeightAnswer> answers) {
        List<Cup> open = keywork.cups()
                .where(cup -> cup.rest() == Rest.OPEN && keywork.keyOf(cup).group() == group);
        List<Step> known = new ArrayList<>();
        for (int turn = 0; turn < open.size(); turn++) {
            HeightAnswer answer = answers.get(open.get(turn).id());
            PlannedNumber stands = answer == null ? null : answer.asItStands();
            if (stands != null) {
                known.add(new Step(turn, open.get(turn), stands));
            }
        }
        if (known.size() >= FEWEST) {
            odd(known).ifPresent(this::say);
        }
    }

    private Optional<Off> odd(List<Step> known) {
        return known.stream()
                .map(step -> off(step, known))
                .max(Comparator.comparingDouble(
                        off -> Math.abs(off.by().value()) / off.by().u()))
                .filter(off -> Math.abs(off.by().value()) > rules.value("height.step-tolerance_mm"))
                .filter(off -> Math.abs(off.by().value()) > 2 * off.by().u());
    }

    private Off off(Step step, List<Step> known) {
        List<Step> others = known.stream().filter(other -> !other.equals(step)).toList();
        double[] weights = weights(step.turn(), others);
        List<Because.Input> inputs = new ArrayList<>();
        inputs.add(Because.Input.of("height", step.height()));
        others.forEach(
                other -> inputs.add(Because.Input.of(keywork.nameOf(other.cup()).display(), other.height())));
        PlannedNumber by = reasons.derive(
                "pad." + step.cup().hole() + "/offTheLine",
                "height - straight line through the others of its stack",
                "mm",
                in -> in[0] - weighted(in, weights),
                inputs);
        return new Off(step, by);
    }

    /** Weights by which the heights of the others make the value of their least-squares line at a turn. */
    private static double[] weights(int at, List<Step> others) {
        double mean = others.stream().mapToInt(Step::turn).average().orElse(0);
        double spread = others.stream()
                .mapToDouble(other -> (other.turn() - mean) * (other.turn() - mean))
                .sum();
        return others.stream()
                .mapToDouble(other -> 1.0 / others.size() + (at - mean) * (other.turn() - mean) / spread)
                .toArray();
    }

    private static double weighted(double[] in, double[] weights) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * in[i + 1];
        }
        return sum;
    }

    private void say(Off off) {
        String place = "pad." + off.step().cup().hole();
        numbers.put(place, Map.of(NumberName.OFF_THE_LINE, off.by()));
        warnings.add(new Warning(
                Warning.Sort.HEIGHTS,
                String.format(
                        Locale.ROOT,
                        "%s stands %.1f mm %s than its neighbours let expect (± %.1f)",
                        keywork.nameOf(off.step().cup()).display(),
                        Math.abs(off.by().value()),
                        off.by().value() > 0 ? "higher" : "lower",
                        off.by().u()),
                List.of(place)));
    }
}
