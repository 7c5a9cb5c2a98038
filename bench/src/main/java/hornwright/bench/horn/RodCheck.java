package hornwright.bench.horn;

import java.util.HashMap;
import java.util.Map;

/** Rods carry keys, hold them between their posts, and come off in an order that can be. */
final class RodCheck {
    private RodCheck() {}

    static void look(Keywork keywork, Flaws flaws) {
        Map<Integer, String> orders = new HashMap<>();
        for (int i = 0; i < keywork.rods().size(); i++) {
            Rod rod = keywork.rods().list().get(i);
            String at = "/rods/" + i;
            shape(keywork, rod, at, flaws);
            order(keywork, rod, at, flaws);
            String other = orders.put(rod.order(), rod.id());
            if (other != null) {
                flaws.add(at + "/order", other + " already comes off at this point", "a number of its own");
            }
        }
        for (int i = 0; i < keywork.keys().size(); i++) {
            Key key = keywork.keys().list().get(i);
            Rod rod = keywork.rodOf(key);
            double place = key.axis().atMm();
            if (place < rod.fromMm() || place > rod.toMm()) {
                flaws.add(
                        "/keys/" + i + "/axis/at_mm",
                        "the key turns at " + place + ", beyond its rod",
                        "between " + rod.fromMm() + " and " + rod.toMm());
            }
        }
    }

    private static void shape(Keywork keywork, Rod rod, String at, Flaws flaws) {
        if (keywork.keysOn(rod).isEmpty()) {
            flaws.add(at, "no key turns on " + rod.id(), "a key with \"rod\": \"" + rod.id() + "\"");
        }
        if (rod.toMm() < rod.fromMm()) {
            flaws.add(at + "/to_mm", "the rod runs backwards", "at least " + rod.fromMm());
        }
        if (rod.posts().size() < 2) {
            flaws.add(at + "/posts", "a rod needs a post at each end", "two posts at least");
        }
    }

    private static void order(Keywork keywork, Rod rod, String at, Flaws flaws) {
        for (int j = 0; j < rod.removeAfter().size(); j++) {
            String before = rod.removeAfter().get(j);
            String where = at + "/removeAfter/" + j;
            flaws.unlessKnown(keywork.rods(), before, "rod", where);
            if (keywork.rods()
                    .find(before)
                    .filter(r -> r.order() >= rod.order())
                    .isPresent()) {
                flaws.add(where, before + " comes off later than " + rod.id(), "a rod with a smaller order");
            }
        }
    }
}
