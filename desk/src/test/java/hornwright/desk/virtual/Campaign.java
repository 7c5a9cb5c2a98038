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

    /** Regulating takes most of the time, so only every so manieth horn is regulated. */
    private static final int REGULATED = 10;

    private final Keywork pattern;
    private final Hand hand = Hand.skilled();
    private final Count usual = new Count();
    private final Map<Length, Count> planned = new EnumMap<>(Length.class);
    private final Map<Length, Coverage> coverage = new EnumMap<>(Length.class);
    private final LinkCount usualLinks = new LinkCount();
    private final LinkCount plannedLinks = new LinkCount();
    private final Coverage linkCoverage = new Coverage();

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
        if (horn.seed() % REGULATED == 1) {
            usualLinks.add(new Regulating(pattern, horn.seed(), RULES).usual());
            plannedLinks.add(new Regulating(pattern, horn.seed(), RULES).planned(linkCoverage));
        }
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

    LinkCount usualLinks() {
        return usualLinks;
    }

    LinkCount plannedLinks() {
        return plannedLinks;
    }

    Coverage linkCoverage() {
        return linkCoverage;
    }

    void print() {
        usualLinks.print(pattern.id() + " usual");
        plannedLinks.print(pattern.id() + " planned");
        linkCoverage.print(pattern.id() + " links");
        usual.print(pattern.id() + " usual");
        planned.forEach((length, count) -> count.print(pattern.id() + " " + length));
        coverage.forEach((length, tallies) -> tallies.print(pattern.id() + " " + length));
    }
}
