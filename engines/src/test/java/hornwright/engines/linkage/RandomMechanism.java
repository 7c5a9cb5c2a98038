package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Limits;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Sense;
import hornwright.engines.linkage.Mechanism.Spring;
import hornwright.engines.linkage.Mechanism.Stop;
import hornwright.engines.linkage.Mechanism.Towards;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Mechanisms of the size and stiffness of keywork, with links in any direction, circles among them. */
final class RandomMechanism {
    private RandomMechanism() {}

    static Mechanism of(Random random, int keys, int links) {
        List<Mechanism.Key> key = new ArrayList<>();
        List<Cup> cups = new ArrayList<>();
        List<Stop> stops = new ArrayList<>();
        List<Spring> springs = new ArrayList<>();
        for (int i = 0; i < keys; i++) {
            String id = "k" + i;
            key.add(new Mechanism.Key(id, random.nextBoolean() ? 0 : 0.3 * random.nextDouble()));
            if (random.nextInt(4) > 0) {
                cups.add(new Cup(
                        "cup" + i, id, arm(random), 3e3 + 2e4 * random.nextDouble(), 2e-4 * random.nextGaussian()));
            }
            if (random.nextInt(5) > 0) {
                Limits limits = random.nextInt(4) == 0 ? Limits.CLOSING : Limits.OPENING;
                stops.add(new Stop("stop" + i, id, arm(random), 4e-3 * random.nextDouble(), 1e-3, 2e5, limits));
            }
            Towards towards = random.nextBoolean() ? Towards.OPEN : Towards.CLOSED;
            springs.add(new Spring(id, 0.03 * random.nextDouble(), 1e-3 + 0.03 * random.nextDouble(), towards));
        }
        return new Mechanism(key, cups, stops, links(random, keys, links), springs);
    }

    private static List<Link> links(Random random, int keys, int count) {
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int driver = random.nextInt(keys);
            int follower = (driver + 1 + random.nextInt(keys - 1)) % keys;
            Sense sense = random.nextInt(3) == 0 ? Sense.OPENS : Sense.CLOSES;
            double stiffness = 3e4 * Math.pow(30, random.nextDouble());
            double space = 1e-3 + 2e-4 * random.nextGaussian();
            links.add(new Link(
                    "l" + i, "k" + driver, arm(random), "k" + follower, arm(random), space, 1e-3, stiffness, sense));
        }
        return links;
    }

    static double arm(Random random) {
        return 6e-3 + 3e-2 * random.nextDouble();
    }

    static List<Press> press(Random random, int keys) {
        return List.of(
                new Press("k" + random.nextInt(keys), 2 * random.nextDouble(), arm(random)),
                new Press("k" + random.nextInt(keys), random.nextDouble(), -arm(random)));
    }
}
