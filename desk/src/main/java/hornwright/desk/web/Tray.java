package hornwright.desk.web;

import hornwright.bench.plan.NumberName;
import hornwright.bench.steps.StepState;
import hornwright.desk.web.view.Frame.Compartment;
import hornwright.desk.web.view.OnBench;
import java.util.List;

/** The pages of a horn as compartments of a tray, each with what lies in it, in words. */
final class Tray {
    private Tray() {}

    static List<Compartment> of(OnBench bench, String current) {
        return List.of(
                compartment(bench, "", "The horn", bench.keywork().places().size() + " places", current),
                compartment(bench, "survey", "Survey", looked(bench), current),
                compartment(bench, "measure", "Measure", count(readings(bench), "reading"), current),
                compartment(bench, "plan", "Plan", sized(bench), current),
                compartment(bench, "work", "Work", worked(bench), current),
                compartment(bench, "history", "History", count(bench.history().seq(), "edit"), current));
    }

    private static Compartment compartment(OnBench bench, String page, String name, String fact, String current) {
        return new Compartment(name, bench.address(page), fact, page.equals(current));
    }

    private static long readings(OnBench bench) {
        return bench.job().readings().current().size();
    }

    private static String looked(OnBench bench) {
        int places = bench.job().findings().byPlace().size();
        int groups = bench.job().findings().byGroup().size();
        return places + groups == 0
                ? "nothing yet"
                : count(groups, "stroke") + (places == 0 ? "" : ", " + count(places, "place"));
    }

    private static String sized(OnBench bench) {
        long sized = bench.keywork().cups().stream()
                .filter(cup -> bench.numberOf(cup, NumberName.DIAMETER).isPresent())
                .count();
        return "%d of %d pads sized".formatted(sized, bench.keywork().cups().size());
    }

    private static String worked(OnBench bench) {
        long again = bench.plan().order().stream()
                .filter(step -> step.state() instanceof StepState.Recheck)
                .count();
        long done = bench.plan().order().stream()
                .filter(step -> step.state() instanceof StepState.Good)
                .count();
        return again > 0
                ? again + " to look at again"
                : "%d of %d steps".formatted(done, bench.plan().order().size());
    }

    private static String count(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }
}
