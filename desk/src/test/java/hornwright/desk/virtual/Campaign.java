package hornwright.desk.virtual;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.virtual.Survey.Length;
import java.util.EnumMap;
import java.util.Map;

/** Horns of one model, one seed each, done the usual way and by the plan of every length of look. */
final class Campaign {
    private static final ShopRules RULES = ShopRules.shipped();

    private final Keywork pattern;
    private final Hand hand = Hand.skilled();
    private final Count usual = new Count();
    private final Map<Length, Count> planned = new EnumMap<>(Length.class);
    private final Map<Length, Coverage> coverage = new EnumMap<>(Length.class);

    private Campaign(Keywork pattern) {
        this.pattern = pattern;
        for (Length length : Length.values()) {
            planned.put(length, new Count());
            coverage.put(length, new Coverage());
        }
    }

    static Campaign of(Keywork pattern, int first, int last) {
        Campaign campaign = new Campaign(pattern);
        for (int seed = first; seed <= last; seed++) {
            campaign.horn(VirtualHorn.invent(pattern, seed));
        }
        return campaign;
    }

    private void horn(VirtualHorn horn) {
        usual.add(horn, new Ways.Usual(), hand, new Instruments(RULES, horn.seed()));
        for (Length length : Length.values()) {
            Plan plan = Planner.plan(Survey.of(horn, length, RULES));
            new Stated(plan, coverage(length)).against(horn);
            planned(length).add(horn, new Ways.Planned(plan, RULES), hand, new Instruments(RULES, horn.seed()));
        }
    }

    Count usual() {
        return usual;
    }

    Count planned(Length length) {
        return java.util.Objects.requireNonNull(planned.get(length));
    }

    Coverage coverage(Length length) {
        return java.util.Objects.requireNonNull(coverage.get(length));
    }

    void print() {
        usual.print(pattern.id() + " usual");
        planned.forEach((length, count) -> count.print(pattern.id() + " " + length));
        coverage.forEach((length, tallies) -> tallies.print(pattern.id() + " " + length));
    }
}
