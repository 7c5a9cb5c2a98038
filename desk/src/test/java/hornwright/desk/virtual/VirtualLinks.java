package hornwright.desk.virtual;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Keywork;
import hornwright.bench.regulation.Feeler;
import hornwright.bench.regulation.Watch;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Equilibrium;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.SetThickness;
import hornwright.engines.linkage.Thicknesses;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * The action of one virtual horn: arms, stiffnesses and twist differ from the pattern the plan reckons with, and each pad
 * closes a little early or late, as floating left it. Contacts have a thickness each, mm.
 */
final class VirtualLinks {
    private static final double MM = 1e-3;
    private static final double ARMS = 0.03;
    private static final double STIFFNESS = 0.15;
    private static final double TWIST = 0.1;
    private static final double SPRINGS = 0.1;

    /** Where a floated pad closes, mm: the shop rule assembly.pad-u_mm. */
    private static final double PADS_MM = 0.03;

    private final Keywork pattern;
    private final long seed;
    private final double differs;
    private final List<Watch> watches;
    private final Map<Set<String>, Mechanism> byAway = new HashMap<>();
    private final Map<String, Double> right = new LinkedHashMap<>();
    private final Map<String, Double> now = new LinkedHashMap<>();

    VirtualLinks(Keywork pattern, long seed) {
        this(pattern, seed, 1);
    }

    /** @param differs 1: as horns differ from their pattern, 0: not at all */
    VirtualLinks(Keywork pattern, long seed, double differs) {
        this.pattern = pattern;
        this.seed = seed;
        this.differs = differs;
        this.watches = Watch.all(pattern);
        Action action = Action.asBuilt(pattern);
        for (Watch watch : watches) {
            byAway.computeIfAbsent(
                    watch.away(), away -> truth(action.holdingAway(away).mechanism()));
        }
        List<Landing> landings = Watch.cups(pattern).stream()
                .map(watch -> new Landing(Action.press(pattern.keys().get(watch.press()), 1), List.of(watch.at())))
                .toList();
        for (SetThickness set :
                Thicknesses.of(truth(action.mechanism()), landings).set()) {
            right.put(set.link(), set.thickness() / MM);
        }
        now.putAll(right);
    }

    /** Each part differs by its own draw, the same whichever keys are held away. */
    private Mechanism truth(Mechanism as) {
        return new Mechanism(
                as.keys().stream()
                        .map(key -> new Mechanism.Key(key.id(), key.flex() * factor(key.id(), TWIST)))
                        .toList(),
                as.cups().stream()
                        .map(cup -> new Mechanism.Cup(
                                cup.id(),
                                cup.key(),
                                cup.arm() * factor(cup.id() + " arm", ARMS),
                                cup.stiffness() * factor(cup.id() + " pad", STIFFNESS),
                                cup.offset() + MM * draw(cup.id() + " closes").normal(differs * PADS_MM)))
                        .toList(),
                as.stops(),
                as.links().stream().map(this::truth).toList(),
                as.springs().stream().map(this::truth).toList());
    }

    private Mechanism.Link truth(Mechanism.Link link) {
        return new Mechanism.Link(
                link.id(),
                link.driver(),
                link.driverArm() * factor(link.id() + " driver", ARMS),
                link.follower(),
                link.followerArm() * factor(link.id() + " follower", ARMS),
                link.space(),
                link.thickness(),
                link.stiffness() * factor(link.id() + " cork", STIFFNESS),
                link.sense());
    }

    private Mechanism.Spring truth(Mechanism.Spring spring) {
        double factor = factor(spring.key() + " spring", SPRINGS);
        return new Mechanism.Spring(spring.key(), spring.torque() * factor, spring.rate() * factor, spring.towards());
    }

    private double factor(String what, double sd) {
        return Math.max(0.5, 1 + draw(what).normal(differs * sd));
    }

    private Draw draw(String what) {
        return Draw.of(seed, what);
    }

    List<String> contacts() {
        return List.copyOf(right.keySet());
    }

    List<Watch> watches() {
        return watches;
    }

    /** How much too thick a contact is. */
    double error(String contact) {
        return Objects.requireNonNull(now.get(contact)) - Objects.requireNonNull(right.get(contact));
    }

    void change(String contact, double by) {
        now.merge(contact, by, Double::sum);
    }

    /** Gap at every watch with its key pressed so many times as hard as its touch was made for, mm. */
    double[] gaps(double times) {
        Map<Set<String>, Balance> balances = new HashMap<>();
        Map<String, Equilibrium> pressed = new HashMap<>();
        double[] gaps = new double[watches.size()];
        for (int i = 0; i < gaps.length; i++) {
            Watch watch = watches.get(i);
            Balance balance = balances.computeIfAbsent(watch.away(), away -> Balance.of(thick(state(away))));
            Equilibrium at = pressed.computeIfAbsent(
                    watch.press() + watch.away(),
                    key -> balance.under(List.of(Action.press(pattern.keys().get(watch.press()), times))));
            gaps[i] = gap(state(watch.away()), at, watch.at()) / MM;
        }
        return gaps;
    }

    private Mechanism state(Set<String> away) {
        return Objects.requireNonNull(byAway.get(away));
    }

    private Mechanism thick(Mechanism mechanism) {
        Map<String, Double> metres = new HashMap<>();
        now.forEach((contact, mm) -> metres.put(contact, MM * mm));
        return mechanism.withLinkThicknesses(metres);
    }

    private static double gap(Mechanism mechanism, Equilibrium at, String where) {
        for (int i = 0; i < mechanism.cups().size(); i++) {
            if (mechanism.cups().get(i).id().equals(where)) {
                return at.cups().gap()[i];
            }
        }
        for (int i = 0; i < mechanism.links().size(); i++) {
            if (mechanism.links().get(i).id().equals(where)) {
                return at.links().gap()[i];
            }
        }
        throw new IllegalArgumentException("nothing is called " + where);
    }

    /** The largest gap under any cup that must be shut. */
    double worst(double times) {
        double[] gaps = gaps(times);
        double worst = 0;
        for (int i = 0; i < gaps.length; i++) {
            worst = watches.get(i).at().startsWith("cup.") ? Math.max(worst, gaps[i]) : worst;
        }
        return worst;
    }

    /** Feelers under every watched cup and in every hold-down; no leaf goes into what is shut. */
    List<Feeler> felt(double u, double times, Draw hand) {
        double[] gaps = gaps(times);
        List<Feeler> readings = new ArrayList<>();
        for (int i = 0; i < gaps.length; i++) {
            double read = gaps[i] <= 0 ? 0 : Math.max(0, Draw.read(gaps[i] + hand.normal(u), 0.01));
            readings.add(new Feeler(watches.get(i).press(), watches.get(i).at(), read, u));
        }
        return readings;
    }
}
