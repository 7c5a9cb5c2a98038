package hornwright.engines.linkage;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds rest positions of one mechanism under many loads. Exact for the model to about 1e-12 of the largest torque.
 * Keeps work arrays: one thread at a time, the results are free.
 */
public final class Balance {
    /** Shares of the smallest stiffness present that stand in for none, so that a loose key stays where it is. */
    private static final double WHISPER = 1e-9;

    /** Share of the largest torque; what is left over beyond it is a load that nothing takes up. */
    private static final double LEFT_OVER = 1e-4;

    /** Share of the torque with which contacts squeeze each other at rotation 0; less is its rounding. */
    private static final double SQUEEZED = 1e-9;

    private static final int POLISH = 4;

    private final Mechanism mechanism;
    private final Index keyIndex;
    private final Contacts contacts;
    private final List<Island> islands;
    private final int[] islandOf;
    private final Settling[] settlings;
    private final double[] rate;
    private final double[] sprung;
    private final boolean[] loose;

    private Balance(Mechanism mechanism, Contacts contacts, List<Island> islands) {
        this.mechanism = mechanism;
        this.contacts = contacts;
        this.islands = islands;
        int keys = mechanism.keys().size();
        keyIndex = mechanism.keyIndex();
        rate = new double[keys];
        sprung = new double[keys];
        for (Mechanism.Spring spring : mechanism.springs()) {
            int key = keyIndex.of(spring.key());
            rate[key] += spring.rate();
            sprung[key] += spring.opening();
        }
        islandOf = new int[keys];
        loose = new boolean[islands.size()];
        settlings = new Settling[islands.size()];
        for (int i = 0; i < islands.size(); i++) {
            settlings[i] = new Settling(islands.get(i));
            for (int key : islands.get(i).keys) {
                islandOf[key] = i;
                loose[i] |= rate[key] == 0;
            }
        }
        reload();
    }

    public static Balance of(Mechanism mechanism) {
        Contacts contacts = Contacts.of(mechanism);
        return new Balance(mechanism, contacts, Island.of(mechanism.keys().size(), contacts));
    }

    /** A balance of the same mechanism with numbers of its own, to be varied. */
    Balance copy() {
        return new Balance(mechanism, contacts.copy(), islands);
    }

    Contacts contacts() {
        return contacts;
    }

    /** Takes over numbers that were changed in {@link #contacts()}. */
    void reload() {
        for (Settling settling : settlings) {
            settling.load(contacts);
        }
    }

    void reload(int island) {
        settlings[island].load(contacts);
    }

    /** Rest with nothing pressed. */
    public Equilibrium atRest() {
        return under(List.of());
    }

    /**
     * Rest while these fingers press.
     *
     * @throws UnbalancedLoad if no spring and no contact takes up a load
     */
    public Equilibrium under(List<Press> presses) {
        double[] torque = torque(presses);
        double[] rotation = new double[rate.length];
        List<String> unbalanced = new ArrayList<>();
        for (int i = 0; i < islands.size(); i++) {
            try {
                settle(i, torque, rotation);
            } catch (UnbalancedLoad left) {
                unbalanced.addAll(left.keys());
            }
        }
        if (!unbalanced.isEmpty()) {
            throw new UnbalancedLoad(unbalanced);
        }
        return equilibrium(rotation);
    }

    /**
     * Slopes of the gaps at a rest with the thickness of each link, while the same contacts bear: pure numbers, metre per
     * metre. Where a contact is about to begin or cease to bear the slope holds on one side only.
     */
    public GapSlopes slopes(Equilibrium at) {
        double[] rotation = at.rotation();
        double[][] cups = new double[contacts.links][];
        double[][] links = new double[contacts.links][];
        double[][] turning = new double[contacts.links][rate.length];
        for (int i = 0; i < islands.size(); i++) {
            turning(i, rotation, turning);
        }
        for (int i = 0; i < contacts.links; i++) {
            cups[i] = gapSlopes(0, contacts.cups, rotation, turning[i]);
            links[i] = gapSlopes(contacts.linkRow(0), contacts.links, rotation, turning[i]);
            links[i][i] -= 1;
        }
        return new GapSlopes(cups, links);
    }

    private void turning(int island, double[] rotation, double[][] turning) {
        Island one = islands.get(island);
        double[] rates = loose[island] ? whispered(one, WHISPER * leastStiffness(one)) : rate;
        settlings[island].rest(rates, rotation);
        for (int r = 0; r < one.rows.length; r++) {
            int link = one.rows[r] - contacts.linkRow(0);
            if (link >= 0) {
                settlings[island].turning(r, turning[link]);
            }
        }
    }

    private double[] gapSlopes(int from, int count, double[] rotation, double[] turning) {
        double[] slopes = new double[count];
        for (int i = 0; i < count; i++) {
            slopes[i] = contacts.gapSlope(from + i, rotation, turning);
        }
        return slopes;
    }

    private double[] whispered(Island island, double whisper) {
        double[] whispered = rate.clone();
        for (int key : island.keys) {
            whispered[key] += whisper;
        }
        return whispered;
    }

    /** Torque on each key at rotation 0, opening positive. */
    double[] torque(List<Press> presses) {
        double[] torque = sprung.clone();
        for (Press press : presses) {
            torque[keyIndex.of(press.key())] += press.opening();
        }
        return torque;
    }

    int islandOf(String key) {
        return islandOf[keyIndex.of(key)];
    }

    /** Settles one island from its entries of {@code rotation} on. */
    void settle(int island, double[] torque, double[] rotation) {
        if (loose[island]) {
            settleLoose(island, torque, rotation);
        } else {
            settlings[island].settle(rate, torque, rotation);
        }
    }

    /**
     * Where a key has no rate the energy may be flat or fall for ever. A whisper of rate added everywhere makes one
     * rest, near the one with the least rotations; what the whisper has to carry is the load that nothing takes up.
     * Repeating with the whisper centred on the rest found takes its own pull out again.
     */
    private void settleLoose(int island, double[] torque, double[] rotation) {
        Island one = islands.get(island);
        double whisper = WHISPER * leastStiffness(one);
        double[] centred = torque.clone();
        double[] whispered = whispered(one, whisper);
        double largest = 0;
        for (int key : one.keys) {
            rotation[key] = 0;
            largest = Math.max(largest, Math.abs(torque[key]));
        }
        for (int round = 0; round < POLISH; round++) {
            settlings[island].settle(whispered, centred, rotation);
            if (round == 0) {
                double allowed = Math.max(LEFT_OVER * largest, SQUEEZED * squeeze(one));
                refuseLeftOver(one, whisper, allowed, torque, rotation);
            }
            for (int key : one.keys) {
                centred[key] = torque[key] + whisper * rotation[key];
            }
        }
    }

    private double leastStiffness(Island island) {
        double least = Double.POSITIVE_INFINITY;
        for (int key : island.keys) {
            least = rate[key] > 0 ? Math.min(least, rate[key]) : least;
        }
        for (int row : island.rows) {
            least = Math.min(least, contacts.stiffness[row] * contacts.arm1[row] * contacts.arm1[row]);
            if (contacts.key2[row] >= 0) {
                least = Math.min(least, contacts.stiffness[row] * contacts.arm2[row] * contacts.arm2[row]);
            }
        }
        return Double.isInfinite(least) ? 1 : least;
    }

    private double squeeze(Island island) {
        double most = 0;
        for (int row : island.rows) {
            most = Math.max(most, -contacts.free[row] * contacts.stiffness[row] * Math.abs(contacts.arm1[row]));
        }
        return most;
    }

    private void refuseLeftOver(Island island, double whisper, double allowed, double[] torque, double[] rotation) {
        List<String> turning = new ArrayList<>();
        List<String> loaded = new ArrayList<>();
        for (int key : island.keys) {
            if (whisper * Math.abs(rotation[key]) > allowed) {
                turning.add(mechanism.keys().get(key).id());
                if (torque[key] * rotation[key] > 0) {
                    loaded.add(mechanism.keys().get(key).id());
                }
            }
        }
        if (!turning.isEmpty()) {
            throw new UnbalancedLoad(loaded.isEmpty() ? turning : loaded);
        }
    }

    private Equilibrium equilibrium(double[] rotation) {
        return new Equilibrium(
                rotation,
                side(0, contacts.cups, rotation),
                side(contacts.cups, contacts.stops, rotation),
                side(contacts.cups + contacts.stops, contacts.links, rotation));
    }

    private Equilibrium.Side side(int from, int count, double[] rotation) {
        double[] gap = new double[count];
        double[] force = new double[count];
        for (int i = 0; i < count; i++) {
            gap[i] = contacts.gap(from + i, rotation);
            force[i] = contacts.force(from + i, rotation);
        }
        return new Equilibrium.Side(gap, force);
    }
}
