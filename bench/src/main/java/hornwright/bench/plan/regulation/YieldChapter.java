package hornwright.bench.plan.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.regulation.FirstAssembly;
import hornwright.bench.rules.ShopRules;
import java.util.List;
import java.util.stream.Stream;

/** How often everything would shut at once, and what would help most. Takes a third of a second: asked for only where shown. */
public final class YieldChapter {
    /** Everything the answer depends on. */
    public record Question(Keywork keywork, ShopRules rules) {}

    private static final double HUNDREDTHS = 100;

    private final Question ask;
    private final Reasons reasons = new Reasons();

    private YieldChapter(Question ask) {
        this.ask = ask;
    }

    public static YieldAnswer of(Question ask) {
        return new YieldChapter(ask).answer();
    }

    private YieldAnswer answer() {
        FirstAssembly assembly = FirstAssembly.of(Action.asBuilt(ask.keywork()), ask.rules());
        List<YieldAnswer.Worth> worth = assembly.mostWorth().stream()
                .map(gain -> new YieldAnswer.Worth(
                        gain.link(),
                        share("yield/exact " + gain.link(), gain.allClosed()),
                        gap(
                                "yield/gap " + gain.link(),
                                "mean of the largest gaps, this contact exact",
                                gain.meanGapMm())))
                .toList();
        return new YieldAnswer(
                share("yield/all", assembly.allClosed()),
                gap("yield/p95", "the largest gap that 95 first assemblies in 100 stay below", assembly.gapP95Mm()),
                assembly.worstCup(),
                worth,
                reasons.table());
    }

    /** A share of draws has the spread of a count; one of none or all may still be off by about one in all draws. */
    private PlannedNumber share(String id, double share) {
        double count = share * FirstAssembly.DRAWS;
        double u = Math.max(Math.sqrt(count * (1 - share)), 1) / FirstAssembly.DRAWS;
        PlannedNumber of = reasons.derive(
                id,
                "share of %d first assemblies in which every linked cup shuts, drawn with these errors; the ± is of the count"
                        .formatted(FirstAssembly.DRAWS),
                "of 100",
                in -> HUNDREDTHS * share,
                spread());
        return new PlannedNumber(of.value(), of.unit(), HUNDREDTHS * u, id, null, null, null);
    }

    /** A percentile of so many draws is good to about a twentieth of itself. */
    private PlannedNumber gap(String id, String rule, double mm) {
        PlannedNumber of = reasons.derive(id, rule, "mm", in -> mm, spread());
        return new PlannedNumber(of.value(), "mm", Math.max(0.002, Math.abs(mm) / 20), id, null, null, null);
    }

    private List<Because.Input> spread() {
        return Stream.of("assembly.contact-u_mm", "assembly.arm-u_mm", "assembly.pad-u_mm")
                .map(rule -> {
                    PlannedNumber number = reasons.rule(ask.rules(), rule);
                    return Because.Input.of(ask.rules().get(rule).says(), number);
                })
                .toList();
    }
}
