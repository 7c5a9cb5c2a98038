package hornwright.bench.plan.heights;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import java.util.Optional;

/** How thick one piece at a stop is now, and how thick it is planned. */
final class LayerThickness {
    private final HeightQuestion ask;
    private final Reasons reasons;

    LayerThickness(HeightQuestion ask, Reasons reasons) {
        this.ask = ask;
        this.reasons = reasons;
    }

    Optional<PlannedNumber> now(LayerNow layer) {
        String place = layer.layer().place();
        return new ReadNumbers(ask.rules(), reasons)
                .mean(place + "/read", "mean of the thicknesses read", layer.readings())
                .or(() -> found(layer, place));
    }

    /** A piece that stays is as thick as it is; a new one is cut as thick as the maker's, as well as a caliper tells. */
    PlannedNumber planned(LayerNow layer) {
        String place = layer.layer().place();
        Optional<PlannedNumber> now = layer.renewed() ? Optional.empty() : now(layer);
        return now.orElseGet(() -> reasons.leaf(
                new Because.FromPattern(
                        "cut as the pattern " + place,
                        "thickness of " + place + " in the pattern "
                                + ask.keywork().id() + ", cut to it",
                        ask.keywork().id()),
                layer.layer().thicknessMm(),
                "mm",
                ask.rules().value("u.caliper_mm")));
    }

    private Optional<PlannedNumber> found(LayerNow layer, String place) {
        Double thick = layer.foundMm();
        if (thick == null) {
            return Optional.empty();
        }
        String says = layer.byGroup() ? "thickness measured once for its group" : "thickness noted when it was found";
        double u = ask.rules().value(layer.byGroup() ? "group.differs_mm" : "u.caliper_mm");
        Because.Leaf leaf = new Because.FromFinding("found thickness " + place, says, place);
        return Optional.of(reasons.leaf(leaf, thick, "mm", thick > 0 ? u : 0));
    }
}
