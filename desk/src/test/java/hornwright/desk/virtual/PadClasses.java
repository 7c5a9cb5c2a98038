package hornwright.desk.virtual;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.PadClass;
import hornwright.desk.virtual.Survey.Length;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/** What the class of the pads is worth, each way of working with soft, medium and firm pads on every cup. */
final class PadClasses {
    private static final ShopRules RULES = ShopRules.shipped();

    /** A way of working, and how well the edge of a pad is seen and moved. */
    enum Way {
        USUAL,
        HOUR,
        KNOWN,
        HOUR_EDGE_6,
        HOUR_EDGE_3
    }

    private final Map<PadClass, Map<Way, Count>> counts = new EnumMap<>(PadClass.class);

    static PadClasses of(Keywork pattern, int first, int last) {
        PadClasses classes = new PadClasses();
        for (int seed = first; seed <= last; seed++) {
            VirtualHorn horn = VirtualHorn.invent(pattern, seed);
            Plan plan = Planner.plan(Survey.of(horn, Length.HOUR_AS_ASKED, RULES));
            for (PadClass padClass : PadClass.values()) {
                classes.add(padClass, horn.padded(padClass, RULES), plan);
            }
        }
        return classes;
    }

    private void add(PadClass padClass, VirtualHorn horn, Plan plan) {
        Hand hand = Hand.skilled();
        Ways planned = new Ways.Planned(plan, RULES);
        add(padClass, Way.USUAL, horn, new Ways.Usual(), hand);
        add(padClass, Way.HOUR, horn, planned, hand);
        add(padClass, Way.KNOWN, horn, new Ways.Knowing(), hand);
        add(padClass, Way.HOUR_EDGE_6, horn, planned, hand.withEdge(0.006));
        add(padClass, Way.HOUR_EDGE_3, horn, planned, hand.withEdge(0.003));
    }

    private void add(PadClass padClass, Way way, VirtualHorn horn, Ways ways, Hand hand) {
        counts.computeIfAbsent(padClass, none -> new EnumMap<>(Way.class))
                .computeIfAbsent(way, none -> new Count())
                .add(horn, ways, hand, new Instruments(RULES, horn.seed()));
    }

    Count count(Way way, PadClass padClass) {
        return Objects.requireNonNull(
                Objects.requireNonNull(counts.get(padClass)).get(way));
    }

    void print() {
        counts.forEach((padClass, ways) -> ways.forEach((way, count) -> count.print(padClass.word() + " " + way)));
    }
}
