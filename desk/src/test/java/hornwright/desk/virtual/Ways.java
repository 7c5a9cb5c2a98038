package hornwright.desk.virtual;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.rules.ShopRules;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/** How a horn is done: the usual way, or by a plan. */
sealed interface Ways {
    Padding.Intent pad(VirtualCup cup);

    Footing.Intent foot(VirtualCup cup);

    /** Nominal sizes, dry fit by eye. */
    record Usual() implements Ways {
        @Override
        public Padding.Intent pad(VirtualCup cup) {
            return new Padding.Intent(
                    cup.cup().pad().diameterMm(), cup.cup().pad().thicknessMm(), null);
        }

        @Override
        public Footing.Intent foot(VirtualCup cup) {
            return Footing.usual(cup);
        }
    }

    /** By the truth itself, which no reading gives: the best any plan could do. */
    record Knowing() implements Ways {
        @Override
        public Padding.Intent pad(VirtualCup cup) {
            double pad = cup.cup().pad().thicknessMm();
            return new Padding.Intent(Draw.read(cup.inside(), 0.5), pad, cup.room() - pad);
        }

        @Override
        public Footing.Intent foot(VirtualCup cup) {
            double target = cup.cup().heightFrontMm();
            double whole = cup.material(target);
            double others = cup.layers().stream()
                    .skip(1)
                    .mapToDouble(layer -> layer.layer().thicknessMm())
                    .sum();
            double ratio = cup.front(whole - 0.5) - cup.front(whole + 0.5);
            return new Footing.Intent(whole - others + 0.2, ratio, target);
        }
    }

    /** By the plan; where it is less sure of the film than an eye at the dry fit, the eye decides. */
    record Planned(Plan plan, ShopRules rules) implements Ways {
        @Override
        public Padding.Intent pad(VirtualCup cup) {
            String place = "pad." + cup.cup().hole();
            double diameter = number(place, NumberName.DIAMETER).value();
            PlannedNumber wanted = number(place, NumberName.THICKNESS);
            PlannedNumber chosen =
                    plan.number(place, NumberName.CHOSEN_THICKNESS).orElse(null);
            double thickness = chosen == null ? nearest(wanted.value()) : chosen.value();
            return new Padding.Intent(diameter, thickness, film(cup, place));
        }

        private @Nullable Double film(VirtualCup cup, String place) {
            PlannedNumber left = plan.number(place, NumberName.FLOAT).orElse(null);
            double lever = (cup.arm() + cup.radius()) / cup.hole();
            return left == null || left.u() > Baseline.EYE_MM * lever ? null : left.value();
        }

        private static double nearest(double wanted) {
            return Padding.SHELF.stream()
                    .min(Comparator.comparingDouble(kept -> Math.abs(kept - wanted)))
                    .orElseThrow();
        }

        @Override
        public Footing.Intent foot(VirtualCup cup) {
            String place = cup.layers().getFirst().layer().place();
            double cut = plan.number(place, NumberName.CUT_FULL)
                    .map(PlannedNumber::value)
                    .orElseGet(() -> number(place, NumberName.THICKNESS).value() + rules.value("foot.cut-full_mm"));
            double target =
                    number("pad." + cup.cup().hole(), NumberName.HEIGHT_TARGET).value();
            return new Footing.Intent(cut, number(place, NumberName.RATIO).value(), target);
        }

        private PlannedNumber number(String place, NumberName name) {
            return plan.number(place, name).orElseThrow();
        }
    }
}
