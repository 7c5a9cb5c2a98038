package hornwright.desk.virtual;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.regulation.Correction;
import hornwright.bench.regulation.Regulation;
import hornwright.bench.regulation.RegulationPlan;
import hornwright.bench.regulation.Watch;
import hornwright.bench.rules.ShopRules;
import java.util.List;
import java.util.Optional;

/**
 * Regulates the links of a virtual horn. Each contact was first set by itself; then sets are pressed and put right round
 * by round, in the usual way at the worst cup, or all at once by the plan.
 */
final class Regulating {
    /** A contact set by itself, driver and follower closing together under a feeler, mm. */
    private static final double SET_ALONE = 0.03;

    /** Fingers vary in how hard they press while gaps are felt. */
    private static final double FINGER = 0.1;

    private static final int MOST_ROUNDS = 6;

    /** What a gap asks of a contact by rule of thumb: half of it, the arms of links being about half those of cups. */
    private static final double THUMB = 0.5;

    /** @param rounds of feeling and working until every set shut; {@code shut} whether it did in the end */
    record Regulated(boolean shutBefore, boolean shutAfterOne, boolean shut, int rounds, int contacts) {}

    private final VirtualLinks links;
    private final Keywork pattern;
    private final ShopRules rules;
    private final Draw hand;
    private final double feeler;
    private int contacts;

    /** With the shop's own feeler, and contacts cut against a thickness gauge or turned by their screw as its rules say. */
    Regulating(Keywork pattern, long seed, ShopRules rules) {
        this.links = new VirtualLinks(pattern, seed);
        this.pattern = pattern;
        this.rules = rules;
        this.hand = Draw.of(seed, "regulating");
        this.feeler = rules.value("u.feeler_mm");
        links.contacts().forEach(contact -> links.change(contact, hand.normal(SET_ALONE)));
    }

    private boolean shut() {
        return links.worst(rules.value("regulation.force-times")) <= rules.value("regulation.closed_mm");
    }

    private double finger() {
        return rules.value("regulation.feel-times") * (1 + hand.normal(FINGER));
    }

    Regulated usual() {
        boolean before = shut();
        boolean afterOne = before;
        int rounds = 0;
        while (!shut() && rounds < MOST_ROUNDS) {
            rounds++;
            usualRound();
            afterOne = rounds == 1 ? shut() : afterOne;
        }
        return new Regulated(before, afterOne, shut(), rounds, contacts);
    }

    /** Set by set: the worst cup is put right at its nearest contact. */
    private void usualRound() {
        for (String press :
                links.watches().stream().map(Watch::press).distinct().toList()) {
            double[] gaps = links.gaps(finger());
            int worst = -1;
            for (int i = 0; i < gaps.length; i++) {
                Watch watch = links.watches().get(i);
                boolean here = watch.press().equals(press) && watch.at().startsWith("cup.");
                worst = here && (worst < 0 || gaps[i] > gaps[worst]) ? i : worst;
            }
            if (worst >= 0) {
                double felt = gaps[worst] + hand.normal(feeler);
                if (felt > rules.value("regulation.closed_mm")) {
                    putRight(links.watches().get(worst), THUMB * felt);
                }
            }
        }
    }

    /** A follower that stays open wants its contact thicker; an own cup that stays open wants what it drives thinner. */
    private void putRight(Watch open, double by) {
        String key = pattern.cups().get(open.at()).key();
        Optional<Link> into = near(open.press(), key);
        if (into.isPresent()) {
            work(into.get().id(), by);
            return;
        }
        pattern.links().stream()
                .filter(link -> link.driver().equals(key) && links.contacts().contains(link.id()))
                .findFirst()
                .ifPresent(link -> work(link.id(), -by));
    }

    /** The contact that drives an open cup, from the pressed key itself when it does. */
    private Optional<Link> near(String press, String key) {
        List<Link> into = pattern.links().stream()
                .filter(link -> link.follower().equals(key) && links.contacts().contains(link.id()))
                .toList();
        return into.stream()
                .filter(link -> link.driver().equals(press))
                .findFirst()
                .or(() -> press.equals(key) ? Optional.empty() : into.stream().findFirst());
    }

    private void work(String contact, double by) {
        links.change(
                contact, by + hand.normal(Regulation.handUMm(pattern.links().get(contact), rules)));
        contacts++;
    }

    /** All contacts at once by the plan; again while a set stays open. */
    Regulated planned(Coverage coverage) {
        boolean before = shut();
        boolean afterOne = before;
        int rounds = 0;
        Regulation regulation = Regulation.of(Action.asBuilt(pattern), rules);
        while (!shut() && rounds < MOST_ROUNDS) {
            rounds++;
            RegulationPlan plan = regulation.plan(links.felt(feeler, finger(), hand));
            check(plan, coverage);
            for (Correction correction : plan.corrections()) {
                if (correction.changeMm() != 0) {
                    work(correction.link(), correction.changeMm());
                }
            }
            afterOne = rounds == 1 ? shut() : afterOne;
            checkGaps(plan, coverage);
        }
        return new Regulated(before, afterOne, shut(), rounds, contacts);
    }

    private void check(RegulationPlan plan, Coverage coverage) {
        for (Correction correction : plan.corrections()) {
            String kind = correction.told() ? "contact error, told" : "contact error, not told";
            coverage.add(kind, correction.errorMm(), correction.uMm(), links.error(correction.link()));
        }
    }

    private void checkGaps(RegulationPlan plan, Coverage coverage) {
        double[] gaps = links.gaps(rules.value("regulation.force-times"));
        for (RegulationPlan.Expected expected : plan.expected()) {
            for (int i = 0; i < gaps.length; i++) {
                if (links.watches().get(i).equals(expected.watch())) {
                    coverage.add("expected gap", expected.gapMm(), expected.uMm(), gaps[i]);
                }
            }
        }
    }
}
