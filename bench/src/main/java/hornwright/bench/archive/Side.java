package hornwright.bench.archive;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One side of a ledger: its independent origins, each with the strength of its best item. */
final class Side {
    private final Map<Origin, Integer> best = new HashMap<>();

    Side(List<Evidence> items, SerialRange claimed) {
        for (Evidence item : items) {
            best.merge(item.origin(), Strength.of(item, claimed).value(), Math::max);
        }
    }

    int ofAtLeast(int strength) {
        return (int) best.values().stream().filter(s -> s >= strength).count();
    }

    private long kindsOfAtLeast(int strength) {
        return best.entrySet().stream()
                .filter(e -> e.getValue() >= strength)
                .map(e -> e.getKey().kind())
                .distinct()
                .count();
    }

    /** The grade this side would earn if nothing spoke against it. */
    Grade alone(boolean searched) {
        int three = ofAtLeast(3);
        int two = ofAtLeast(2);
        boolean twoStrong = three >= 2 && kindsOfAtLeast(3) >= 2;
        boolean strongAndTwoMore = three >= 1 && two >= 3 && kindsOfAtLeast(2) >= 2;
        if (searched && (twoStrong || strongAndTwoMore)) {
            return Grade.ESTABLISHED;
        }
        if ((three >= 1 && two >= 2) || two >= 3) {
            return Grade.WELL_SUPPORTED;
        }
        if (two >= 1 || ofAtLeast(1) >= 3) {
            return Grade.INDICATED;
        }
        return best.isEmpty() ? Grade.NOT_ASSESSED : Grade.REPORTED;
    }

    String inWords() {
        return "independent origins of strength 3, 2, 1, 0: " + ofAtLeast(3) + ", " + (ofAtLeast(2) - ofAtLeast(3))
                + ", " + (ofAtLeast(1) - ofAtLeast(2)) + ", " + (best.size() - ofAtLeast(1));
    }
}
