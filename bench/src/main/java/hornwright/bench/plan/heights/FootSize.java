package hornwright.bench.plan.heights;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.rules.Rule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The thickness at a stop that gives the height wanted. Of the ways there are (height now with thickness now and a ratio;
 * clearance and arm; the pattern) the one with the least uncertainty is taken.
 */
final class FootSize {
    private final HeightQuestion ask;
    private final LayerNow adjusted;
    private final Reasons reasons;
    private final String place;
    private final PlannedNumber ratio;

    FootSize(HeightQuestion ask, LayerNow adjusted, CupGeometry geometry, Reasons reasons) {
        this.ask = ask;
        this.adjusted = adjusted;
        this.reasons = reasons;
        this.place = adjusted.layer().place();
        this.ratio = new RiseRatio(ask, geometry, reasons, place).best();
    }

    Map<NumberName, PlannedNumber> numbers(@Nullable PlannedNumber now, PlannedNumber target) {
        PlannedNumber aim = new PlannedNumber(target.value(), "mm", 0, target.because(), null, null, null);
        Map<NumberName, PlannedNumber> numbers = new LinkedHashMap<>();
        PlannedNumber wanted = wanted(now, aim);
        numbers.put(NumberName.THICKNESS, wanted);
        numbers.put(NumberName.RATIO, ratio);
        Optional<PlannedNumber> change = change(now, aim);
        change.ifPresent(number -> numbers.put(NumberName.CHANGE, number));
        if (adjusted.renewed()) {
            PlannedNumber full = new CutFull(ask.rules(), ask.stock(), reasons).foot(place, wanted);
            numbers.put(NumberName.CUT_FULL, full);
            new CutFull(ask.rules(), ask.stock(), reasons)
                    .fromTheShelf(place, adjusted.material(), wanted, full, numbers);
        }
        numbers.put(NumberName.SETTLES, settles(wanted));
        return numbers;
    }

    /** The height once the new material has lost what it loses in the first weeks; set as wanted, whoever wanted it. */
    PlannedNumber settled(PlannedNumber target, Map<NumberName, PlannedNumber> foot) {
        PlannedNumber loss = foot.get(NumberName.SETTLES);
        return reasons.derive(
                ask.pad() + "/heightSettled",
                "height it is set to + what the stop loses x rise for each mm",
                "mm",
                in -> in[0] + in[1] * in[2],
                new Because.Input("height it is set to", target.value(), "mm", 0, target.because()),
                Because.Input.of("stop loses", java.util.Objects.requireNonNull(loss)),
                Because.Input.of("ratio", ratio));
    }

    private PlannedNumber wanted(@Nullable PlannedNumber now, PlannedNumber aim) {
        List<PlannedNumber> ways = new ArrayList<>();
        whole().flatMap(whole -> fromNow(now, whole, aim)).ifPresent(ways::add);
        fromClearance(aim).ifPresent(ways::add);
        ways.add(CupGeometry.pattern(
                reasons,
                ask.rules(),
                ask.keywork(),
                "thickness " + place,
                adjusted.layer().thicknessMm(),
                "foot.from-pattern_mm"));
        return ways.stream()
                .filter(way -> way.value() > 0)
                .min(Comparator.comparingDouble(PlannedNumber::u))
                .orElse(ways.getLast());
    }

    private Optional<PlannedNumber> fromNow(@Nullable PlannedNumber now, PlannedNumber whole, PlannedNumber aim) {
        if (now == null) {
            return Optional.empty();
        }
        List<Because.Input> inputs = new ArrayList<>(List.of(
                Because.Input.of("thickness there now", whole),
                Because.Input.of("height now", now),
                Because.Input.of("height wanted", aim),
                Because.Input.of("ratio", ratio),
                newPad()));
        inputs.addAll(others());
        double usual = newPad().value();
        return Optional.of(reasons.derive(
                place + "/thickness from the height now",
                "thickness there now + (height now - height wanted) / ratio - other pieces at the stop; a new pad may hang"
                        + " higher or lower than the one the height was read with",
                "mm",
                in -> in[0] + (in[1] - in[2] + in[4] - usual) / in[3] - sum(in, 5),
                inputs));
    }

    private Optional<PlannedNumber> change(@Nullable PlannedNumber now, PlannedNumber aim) {
        if (now == null) {
            return Optional.empty();
        }
        double usual = newPad().value();
        return Optional.of(reasons.derive(
                place + "/change",
                "(height now - height wanted) / ratio: more lowers the cup, less raises it",
                "mm",
                in -> (in[0] - in[1] + in[3] - usual) / in[2],
                Because.Input.of("height now", now),
                Because.Input.of("height wanted", aim),
                Because.Input.of("ratio", ratio),
                newPad()));
    }

    /** What the pad a height was read with and the one it is wanted with may differ by; nothing once the new one is in. */
    private Because.Input newPad() {
        PlannedNumber differs = reasons.rule(ask.rules(), "height.pads-differ_mm");
        boolean old = ask.readWithOldPad();
        return new Because.Input(
                "a new pad may differ by",
                old ? differs.value() : 0,
                "mm",
                old ? differs.value() : 0,
                differs.because());
    }

    /** Key closed, metal to metal: what the foot travels until the cup is as high as wanted stays free. */
    private Optional<PlannedNumber> fromClearance(PlannedNumber aim) {
        return new ReadNumbers(ask.rules(), reasons)
                .mean(place + "/clearance", "mean of the clearances read", ask.clearances())
                .map(clearance -> {
                    List<Because.Input> inputs = new ArrayList<>(List.of(
                            Because.Input.of("clearance, key closed", clearance),
                            Because.Input.of("height wanted", aim),
                            Because.Input.of("ratio", ratio)));
                    inputs.addAll(others());
                    return reasons.derive(
                            place + "/thickness from the clearance",
                            "clearance - height wanted / ratio - other pieces at the stop",
                            "mm",
                            in -> in[0] - in[1] / in[2] - sum(in, 3),
                            inputs);
                });
    }

    /** What lies at the stop now, all pieces together; empty when one of them is not known. */
    private Optional<PlannedNumber> whole() {
        List<Because.Input> inputs = new ArrayList<>();
        for (LayerNow layer : ask.layers()) {
            Optional<PlannedNumber> there = new LayerThickness(ask, reasons).now(layer);
            if (there.isEmpty()) {
                return Optional.empty();
            }
            inputs.add(Because.Input.of(layer.layer().place(), there.get()));
        }
        return Optional.of(
                inputs.size() == 1
                        ? new LayerThickness(ask, reasons)
                                .now(ask.layers().getFirst())
                                .orElseThrow()
                        : reasons.derive(
                                place + "/there now",
                                "all pieces at the stop together",
                                "mm",
                                in -> sum(in, 0),
                                inputs));
    }

    private List<Because.Input> others() {
        return ask.layers().stream()
                .filter(layer -> !layer.equals(adjusted))
                .map(layer -> Because.Input.of(layer.layer().place(), new LayerThickness(ask, reasons).planned(layer)))
                .toList();
    }

    /** Only new material settles; what is kept has done so. */
    private PlannedNumber settles(PlannedNumber wanted) {
        List<Because.Input> inputs = new ArrayList<>();
        for (LayerNow layer : ask.layers()) {
            PlannedNumber thick = layer.equals(adjusted) ? wanted : new LayerThickness(ask, reasons).planned(layer);
            inputs.add(Because.Input.of(layer.layer().place(), thick));
            inputs.add(Because.Input.of("share it loses", share(layer)));
        }
        return reasons.derive(
                place + "/settles",
                "thickness x share the material loses, summed over the pieces; kept pieces lose nothing more",
                "mm",
                FootSize::products,
                inputs);
    }

    private PlannedNumber share(LayerNow layer) {
        if (!layer.renewed()) {
            return reasons.leaf(
                    new Because.CommonPractice("old material has settled", "what is kept has settled already"),
                    0,
                    "",
                    0);
        }
        String material =
                layer.material() == null ? "unknown" : layer.material().replace(' ', '-');
        String id = "settling." + material;
        Optional<Rule> known = ask.rules().find(id);
        return reasons.rule(ask.rules(), known.isPresent() ? id : "settling.unknown");
    }

    private static double products(double[] in) {
        double sum = 0;
        for (int i = 0; i + 1 < in.length; i += 2) {
            sum += in[i] * in[i + 1];
        }
        return sum;
    }

    private static double sum(double[] in, int from) {
        double sum = 0;
        for (int i = from; i < in.length; i++) {
            sum += in[i];
        }
        return sum;
    }
}
