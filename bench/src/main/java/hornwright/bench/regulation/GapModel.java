package hornwright.bench.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Keywork;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Equilibrium;
import hornwright.engines.linkage.GapSlopes;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.SetThickness;
import hornwright.engines.linkage.Thicknesses;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Gaps at watched spots as the contacts' errors would leave them, mm. An error is how much thicker a contact is than the
 * thickness at which all cups of its sets land together.
 */
final class GapModel {
    private static final double PER_METRE = 1e3;

    /** Share of the touch's force by which a finger presses harder to see what that does. */
    private static final double HARDER = 0.02;

    private final Keywork keywork;
    private final List<Watch> watches;
    private final List<String> links;
    private final double[] aimedMm;
    private final Map<Set<String>, Mechanism> byAway;
    private final List<Set<String>> ways;
    private final List<Pressed> presses;
    private final List<String> pressed;

    /** One state of the fingers and the spots felt in it. */
    private record Pressed(String key, Set<String> away, List<Spot> spots) {}

    /** Number of a watch, and where its gap stands among the mechanism's cups or links. */
    private record Spot(int watch, int cup, int link) {}

    /** Gaps, and their slopes with each contact's thickness and each finger, [watch][contact, then pressed key]. */
    record Gaps(double[] mm, double[][] slopes) {}

    private GapModel(
            Keywork keywork,
            List<Watch> watches,
            List<String> links,
            double[] aimedMm,
            Map<Set<String>, Mechanism> byAway) {
        this.keywork = keywork;
        this.watches = watches;
        this.links = links;
        this.aimedMm = aimedMm;
        this.byAway = byAway;
        ways = watches.stream().map(watch -> Watch.ways(keywork, watch.press())).toList();
        presses = presses();
        pressed = presses.stream().map(Pressed::key).distinct().toList();
    }

    static GapModel of(Action action) {
        Keywork keywork = action.keywork();
        List<Watch> watches = Watch.all(keywork);
        List<Landing> landings = Watch.cups(keywork).stream()
                .map(watch -> new Landing(Action.press(keywork.keys().get(watch.press()), 1), List.of(watch.at())))
                .toList();
        List<SetThickness> aims = Thicknesses.of(action.mechanism(), landings).set();
        Set<String> pressed = watches.stream().map(Watch::press).collect(Collectors.toSet());
        Map<Set<String>, Mechanism> byAway = new LinkedHashMap<>();
        for (Watch watch : watches) {
            byAway.computeIfAbsent(
                    watch.away(), away -> action.holdingAway(away).mechanism().around(pressed));
        }
        return new GapModel(
                keywork,
                watches,
                aims.stream().map(SetThickness::link).toList(),
                aims.stream().mapToDouble(aim -> PER_METRE * aim.thickness()).toArray(),
                byAway);
    }

    /** The same contacts seen through some of the watches. */
    GapModel watching(List<Watch> some) {
        return new GapModel(keywork, some, links, aimedMm, byAway);
    }

    /** Whether a finger that is felt at this watch works through this contact. */
    boolean bears(int link, int watch) {
        return ways.get(watch).contains(links.get(link));
    }

    List<Watch> watches() {
        return watches;
    }

    /** Ids of the contacts between pressed keys and cups that must shut, in the order of the keywork. */
    List<String> links() {
        return links;
    }

    /** Ids of the keys pressed. */
    List<String> pressed() {
        return pressed;
    }

    private List<Pressed> presses() {
        Map<List<Object>, Pressed> all = new LinkedHashMap<>();
        for (int i = 0; i < watches.size(); i++) {
            Watch watch = watches.get(i);
            Mechanism mechanism = mechanism(watch.away());
            List<String> cups = mechanism.cups().stream().map(Mechanism.Cup::id).toList();
            List<String> contacts =
                    mechanism.links().stream().map(Mechanism.Link::id).toList();
            all.computeIfAbsent(
                            List.of(watch.press(), watch.away()),
                            state -> new Pressed(watch.press(), watch.away(), new ArrayList<>()))
                    .spots()
                    .add(new Spot(i, cups.indexOf(watch.at()), contacts.indexOf(watch.at())));
        }
        return List.copyOf(all.values());
    }

    private Mechanism mechanism(Set<String> away) {
        Mechanism mechanism = byAway.get(away);
        if (mechanism == null) {
            throw new IllegalStateException("nothing is known with " + away + " held away");
        }
        return mechanism;
    }

    /**
     * Gap at each watched spot; negative where it is pressed in.
     *
     * @param errorsMm of each of {@link #links()}
     * @param times how many times as hard as each touch was made for
     */
    double[] gapsMm(double[] errorsMm, double times) {
        return gaps(errorsMm, all(times), false).mm();
    }

    /**
     * By how much each gap changes when the force, and with it what gives, is larger by a share; a pad pressed in by its own
     * spring, which no finger's force changes, by that share of how deep it is.
     */
    double[] givesMm(double[] errorsMm, double times, double share) {
        double[] as = gapsMm(errorsMm, times);
        double[] more = gapsMm(errorsMm, times * (1 + share));
        double[] gives = new double[as.length];
        for (int i = 0; i < gives.length; i++) {
            gives[i] = Math.hypot(more[i] - as[i], share * Math.min(0, as[i]));
        }
        return gives;
    }

    /** The same with slopes: first with the thickness of each contact, then with the finger on each pressed key. */
    Gaps gaps(double[] errorsMm, double times) {
        return gaps(errorsMm, all(times));
    }

    /** @param fingers how many times as hard as its touch was made for each of {@link #pressed()} is pressed */
    Gaps gaps(double[] errorsMm, double[] fingers) {
        return gaps(errorsMm, fingers, true);
    }

    private double[] all(double times) {
        double[] fingers = new double[pressed.size()];
        Arrays.fill(fingers, times);
        return fingers;
    }

    private Gaps gaps(double[] errorsMm, double[] fingers, boolean sloping) {
        double[] gaps = new double[watches.size()];
        double[][] slopes = new double[gaps.length][links.size() + pressed.size()];
        Map<Set<String>, Balance> balances = new HashMap<>();
        for (Pressed press : presses) {
            Balance balance =
                    balances.computeIfAbsent(press.away(), away -> Balance.of(with(mechanism(away), errorsMm)));
            int finger = pressed.indexOf(press.key());
            Equilibrium at = pressed(balance, press, fingers[finger]);
            press.spots().forEach(spot -> gaps[spot.watch()] = gapMm(at, spot));
            if (sloping) {
                slope(press, balance.slopes(at), slopes);
                Equilibrium harder = pressed(balance, press, fingers[finger] + HARDER);
                press.spots()
                        .forEach(spot -> slopes[spot.watch()][links.size() + finger] =
                                (gapMm(harder, spot) - gapMm(at, spot)) / HARDER);
            }
        }
        return new Gaps(gaps, slopes);
    }

    private Equilibrium pressed(Balance balance, Pressed press, double times) {
        return balance.under(List.of(Action.press(keywork.keys().get(press.key()), times)));
    }

    private static double gapMm(Equilibrium at, Spot spot) {
        double[] of = spot.cup() >= 0 ? at.cups().gap() : at.links().gap();
        return PER_METRE * of[Math.max(spot.cup(), spot.link())];
    }

    private void slope(Pressed press, GapSlopes slopes, double[][] into) {
        List<String> all =
                mechanism(press.away()).links().stream().map(Mechanism.Link::id).toList();
        for (int i = 0; i < links.size(); i++) {
            int link = all.indexOf(links.get(i));
            for (Spot spot : press.spots()) {
                into[spot.watch()][i] =
                        spot.cup() >= 0 ? slopes.cups()[link][spot.cup()] : slopes.links()[link][spot.link()];
            }
        }
    }

    private Mechanism with(Mechanism mechanism, double[] errorsMm) {
        Map<String, Double> thicknesses = new HashMap<>();
        for (int i = 0; i < links.size(); i++) {
            thicknesses.put(links.get(i), (aimedMm[i] + errorsMm[i]) / PER_METRE);
        }
        return mechanism.withLinkThicknesses(thicknesses);
    }
}
