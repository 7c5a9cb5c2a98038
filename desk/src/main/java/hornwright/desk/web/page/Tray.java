package hornwright.desk.web.page;

import hornwright.bench.steps.StepState;
import hornwright.desk.web.view.Frame.Compartment;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PadSizes;
import java.util.List;
import java.util.stream.Stream;

/** The tray of a horn: its compartments, each with what lies in it, in words, and the sheets of the one that is open. */
final class Tray {
    private final OnBench bench;
    private final Sheet current;

    /** @param page the last words of the address of the page that is shown */
    Tray(OnBench bench, String page) {
        this.bench = bench;
        this.current = Sheet.named(page);
    }

    List<Compartment> compartments() {
        return Stream.of(Bay.values())
                .filter(bay -> !Sheet.in(bay).isEmpty())
                .map(bay -> new Compartment(
                        bay.title(), bench.address(Sheet.in(bay).getFirst().page()), fact(bay), bay == current.bay()))
                .toList();
    }

    /** The sheets of the open compartment; none when there is only one. */
    List<Compartment> sheets() {
        List<Sheet> sheets = Sheet.in(current.bay());
        return sheets.size() < 2
                ? List.of()
                : sheets.stream()
                        .map(sheet -> new Compartment(sheet.title(), bench.address(sheet.page()), "", sheet == current))
                        .toList();
    }

    private String fact(Bay bay) {
        return switch (bay) {
            case HORN -> bench.keywork().places().size() + " places";
            case SURVEY -> looked(bench);
            case MEASURE -> count(readings(bench), "reading");
            case PLAN -> sized(bench);
            case WORK -> worked(bench);
            case SOUND -> played(bench);
            case ARRIVAL -> bench.shotsTaken().replace("taken", "photographs");
            case HANDOVER -> bench.job().decisions().containsKey("hand-over") ? "handed over" : "not yet";
        };
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
        return PadSizes.of(bench).words();
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

    private static String played(OnBench bench) {
        int tests = bench.job().playTests().size();
        return tests == 0 ? "not played yet" : count(tests, "play test");
    }

    private static String count(long number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }
}
