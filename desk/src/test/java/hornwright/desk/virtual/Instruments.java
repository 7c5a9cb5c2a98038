package hornwright.desk.virtual;

import hornwright.bench.rules.ShopRules;
import java.util.HashMap;
import java.util.Map;

/**
 * The shop's instruments. Each errs normally by what the shop rules state of it, half of the variance at most being its own
 * zero, which stays the same all day: the planner takes repeated readings as independent, the bench knows better.
 */
final class Instruments {
    /** Share of an instrument's uncertainty that is common to all it reads on one horn. */
    private static final double COMMON = 0.5;

    private final ShopRules rules;
    private final Draw draw;
    private final Map<String, Double> zeros = new HashMap<>();

    Instruments(ShopRules rules, long seed) {
        this.rules = rules;
        this.draw = Draw.of(seed, "instruments");
    }

    double caliper(double truth) {
        return read("caliper", truth, 0.01);
    }

    double depthRod(double truth) {
        return read("depth-rod", truth, 0.05);
    }

    double rule(double truth) {
        return read("rule", truth, 0.5);
    }

    double wedge(double truth) {
        return read("wedge", truth, 0.1);
    }

    double feeler(double truth) {
        return Math.max(0, read("feeler", truth, 0.01));
    }

    private double read(String name, double truth, double step) {
        double u = rules.value("u." + name + "_mm");
        double zero = zeros.computeIfAbsent(name, none -> draw.normal(COMMON * u));
        return Draw.read(truth + zero + draw.normal(u * Math.sqrt(1 - COMMON * COMMON)), step);
    }
}
