package hornwright.bench.plan.settled;

import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.settled.SettledQuestion.Piece;
import hornwright.bench.rules.Rule;
import java.util.ArrayList;
import java.util.List;

/** What a contact loses, layer by layer. Nothing rests on an idle link, so the layers' losses simply add. */
final class LinkLoss {
    private final SettledQuestion ask;
    private final Reasons reasons;

    LinkLoss(SettledQuestion ask, Reasons reasons) {
        this.ask = ask;
        this.reasons = reasons;
    }

    boolean hasFresh(Link link) {
        return link.layers().stream().anyMatch(layer -> piece(layer).fresh());
    }

    PlannedNumber of(Link link) {
        List<Because.Input> inputs = new ArrayList<>();
        for (Layer layer : link.layers()) {
            inputs.add(Because.Input.of("thickness of " + layer.place(), thickness(layer)));
            inputs.add(Because.Input.of("share " + layer.place() + " loses", share(layer)));
        }
        return reasons.derive(
                "packed/" + link.id(),
                "thickness x share the material loses, summed over the layers; kept layers lose nothing more",
                "mm",
                LinkLoss::products,
                inputs);
    }

    private Piece piece(Layer layer) {
        return ask.pieces().getOrDefault(layer.place(), new Piece(layer.material(), null, false));
    }

    private PlannedNumber thickness(Layer layer) {
        PlannedNumber planned = piece(layer).thickness();
        return planned != null
                ? planned
                : CupGeometry.pattern(
                        reasons,
                        ask.rules(),
                        ask.keywork(),
                        "thickness " + layer.place(),
                        layer.thicknessMm(),
                        "foot.from-pattern_mm");
    }

    private PlannedNumber share(Layer layer) {
        if (!piece(layer).fresh()) {
            return reasons.leaf(
                    new Because.CommonPractice("old material has settled", "what is kept has settled already"),
                    0,
                    "",
                    0);
        }
        String material = piece(layer).material();
        String id = "settling." + (material == null ? "unknown" : material.replace(' ', '-'));
        return reasons.rule(ask.rules(), ask.rules().find(id).map(Rule::id).orElse("settling.unknown"));
    }

    private static double products(double[] in) {
        double sum = 0;
        for (int i = 0; i + 1 < in.length; i += 2) {
            sum += in[i] * in[i + 1];
        }
        return sum;
    }
}
