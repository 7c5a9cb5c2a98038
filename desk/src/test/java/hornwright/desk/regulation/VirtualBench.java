package hornwright.desk.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.action.Thickness;
import hornwright.bench.horn.Keywork;
import hornwright.bench.regulation.Correction;
import hornwright.bench.regulation.Feeler;
import hornwright.bench.regulation.Regulation;
import hornwright.bench.regulation.RegulationPlan;
import hornwright.bench.regulation.Watch;
import hornwright.bench.rules.ShopRules;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Equilibrium;
import hornwright.engines.linkage.Mechanism;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A horn on a bench that exists only here: its contacts are wrong by known amounts, its feelers err, its knife too. It
 * sees gaps by the whole mechanism, one press at a time, not by the model the plan uses.
 */
record VirtualBench(Keywork keywork, Thickness thickness) {

    static VirtualBench asBuilt(Keywork keywork) {
        return new VirtualBench(keywork, Thickness.asBuilt(keywork));
    }

    /** Contacts whose thickness decides whether a cup shuts. */
    static List<String> contacts(Keywork keywork) {
        return Regulation.contacts(Action.asBuilt(keywork));
    }

    VirtualBench wrongBy(String link, double mm) {
        return new VirtualBench(keywork, thickness.with(link, thickness.mm(link) + mm));
    }

    /** So many contacts, chosen at random, wrong by normal errors. */
    VirtualBench withWrong(int count, double sd, Random random) {
        List<String> links = new ArrayList<>(contacts(keywork));
        java.util.Collections.shuffle(links, random);
        VirtualBench wrong = this;
        for (String link : links.subList(0, count)) {
            wrong = wrong.wrongBy(link, sd * random.nextGaussian());
        }
        return wrong;
    }

    double gapMm(Watch watch, double times) {
        Mechanism mechanism = new Action(keywork, thickness, java.util.Set.of(), watch.away()).mechanism();
        Equilibrium at =
                Balance.of(mechanism).under(List.of(Action.press(keywork.keys().get(watch.press()), times)));
        for (int i = 0; i < mechanism.cups().size(); i++) {
            if (mechanism.cups().get(i).id().equals(watch.at())) {
                return 1e3 * at.cups().gap()[i];
            }
        }
        for (int i = 0; i < mechanism.links().size(); i++) {
            if (mechanism.links().get(i).id().equals(watch.at())) {
                return 1e3 * at.links().gap()[i];
            }
        }
        throw new IllegalArgumentException(watch.toString());
    }

    /** Feelers read to 0.01 mm with a normal error; the finger presses up to some share harder or softer than meant. */
    List<Feeler> felt(double u, double fingerShare, Random random) {
        double times = 1.4 * (1 + fingerShare * random.nextGaussian());
        List<Feeler> readings = new ArrayList<>();
        for (Watch watch : Watch.all(keywork)) {
            double gap = gapMm(watch, times);
            double read = gap <= 0 ? 0 : Math.max(0, Math.round(100 * (gap + u * random.nextGaussian())) / 100.0);
            readings.add(new Feeler(watch.press(), watch.at(), read, 0.01));
        }
        return readings;
    }

    VirtualBench worked(RegulationPlan plan, double cut, Random random) {
        VirtualBench worked = this;
        for (Correction correction : plan.corrections()) {
            if (correction.changeMm() != 0) {
                double hand = correction.work() == Correction.Work.SCREW
                        ? Math.max(cut, Regulation.handUMm(keywork.links().get(correction.link()), ShopRules.shipped()))
                        : cut;
                worked = worked.wrongBy(correction.link(), correction.changeMm() + hand * random.nextGaussian());
            }
        }
        return worked;
    }

    double worstMm(double times) {
        return Watch.cups(keywork).stream()
                .mapToDouble(watch -> gapMm(watch, times))
                .max()
                .orElseThrow();
    }
}
