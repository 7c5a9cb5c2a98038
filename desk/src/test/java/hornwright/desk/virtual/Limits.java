package hornwright.desk.virtual;

import hornwright.bench.horn.Keywork;
import hornwright.bench.rules.ShopRules;
import java.util.LinkedHashMap;
import java.util.Map;

/** Which limit binds: the truth known, and then one thing after the other done without error. */
final class Limits {
    private static final String KNOWN = "truth known";

    private final Map<String, Count> counts = new LinkedHashMap<>();

    static Limits of(Keywork pattern, int first, int last) {
        Limits limits = new Limits();
        Hand hand = Hand.skilled();
        for (int seed = first; seed <= last; seed++) {
            VirtualHorn horn = VirtualHorn.invent(pattern, seed);
            limits.add("the usual way", horn, new Ways.Usual(), hand);
            limits.add(KNOWN, horn, new Ways.Knowing(), hand);
            limits.add(KNOWN + ", film as meant", horn, new Ways.Knowing(), hand.layingFilm(0));
            limits.add(KNOWN + ", film even", horn, new Ways.Knowing(), hand.layingEvenly());
            limits.add(KNOWN + ", edge to 0.006", horn, new Ways.Knowing(), hand.withEdge(0.006));
            limits.add(KNOWN + ", edge to 0.003", horn, new Ways.Knowing(), hand.withEdge(0.003));
            limits.add(KNOWN + ", rims without waves", horn.level(), new Ways.Knowing(), hand);
            limits.add("usual way, edge to 0.006", horn, new Ways.Usual(), hand.withEdge(0.006));
        }
        return limits;
    }

    private void add(String what, VirtualHorn horn, Ways way, Hand hand) {
        counts.computeIfAbsent(what, none -> new Count())
                .add(horn, way, hand, new Instruments(ShopRules.shipped(), horn.seed()));
    }

    Count count(String what) {
        return java.util.Objects.requireNonNull(counts.get(what));
    }

    void print() {
        counts.forEach((what, count) -> count.print(what));
    }
}
