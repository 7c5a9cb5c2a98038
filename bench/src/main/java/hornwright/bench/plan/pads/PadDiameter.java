package hornwright.bench.plan.pads;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.Warning;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Pad diameter by the shop's rule: mean inside diameter of the cup, plus the allowance, to the step pads are sold in.
 * Nothing is claimed for a cup nobody has measured.
 */
final class PadDiameter {
    private final PadQuestion ask;
    private final CupGeometry geometry;
    private final Reasons reasons;

    PadDiameter(PadQuestion ask, CupGeometry geometry, Reasons reasons) {
        this.ask = ask;
        this.geometry = geometry;
        this.reasons = reasons;
    }

    void put(Map<NumberName, PlannedNumber> numbers, List<Warning> warnings) {
        ReadNumbers read = new ReadNumbers(ask.rules(), reasons);
        List<PlannedNumber> two = CupGeometry.sizes(ask.insides()).stream()
                .flatMap(r -> read.amount(r).stream())
                .toList();
        Optional<PlannedNumber> mean = read.mean(
                ask.place() + "/cupInside", "mean of the inside diameters read", CupGeometry.sizes(ask.insides()));
        mean.ifPresent(inside -> {
            PlannedNumber diameter = diameter(inside);
            numbers.put(NumberName.CUP_INSIDE, inside);
            numbers.put(NumberName.DIAMETER, diameter);
            edge(inside, diameter, warnings);
            overHole(diameter, numbers, warnings);
        });
        if (two.size() >= 2) {
            ovality(two, numbers, warnings);
        }
    }

    /** A size that is sold is a choice: the doubt is in the reading, and shows in {@link #edge}. */
    private PlannedNumber diameter(PlannedNumber inside) {
        PlannedNumber allowance = reasons.rule(ask.rules(), "pad.allowance_mm");
        PlannedNumber step = reasons.rule(ask.rules(), "pad.step_mm");
        PlannedNumber exact = reasons.derive(
                ask.place() + "/diameter",
                "inside diameter + allowance, rounded (%s) to the step pads are sold in"
                        .formatted(ask.rules().rounding().word()),
                "mm",
                in -> in[0] + in[1],
                Because.Input.of("cup inside diameter", inside),
                Because.Input.of("allowance", allowance),
                Because.Input.of("step", step));
        double rounded = ask.rules().rounding().to(exact.value(), step.value());
        return new PlannedNumber(rounded, "mm", 0, exact.because(), null, null, null);
    }

    /** A mean so near the border between two sizes that reading it again could tip it. */
    private void edge(PlannedNumber inside, PlannedNumber diameter, List<Warning> warnings) {
        double step = ask.rules().value("pad.step_mm");
        double wanted = inside.value() + ask.rules().value("pad.allowance_mm");
        double other = ask.rules().rounding().to(wanted + (wanted >= diameter.value() ? 1 : -1) * inside.u(), step);
        if (Math.abs(other - diameter.value()) > step / 2) {
            warnings.add(warn(String.format(
                    Locale.ROOT,
                    "%s: the cup lies between two pad sizes, %.1f and %.1f; try both or measure again",
                    ask.display(),
                    Math.min(other, diameter.value()),
                    Math.max(other, diameter.value()))));
        }
    }

    private void overHole(PlannedNumber diameter, Map<NumberName, PlannedNumber> numbers, List<Warning> warnings) {
        PlannedNumber over = reasons.derive(
                ask.place() + "/overHole",
                "pad diameter - hole diameter",
                "mm",
                in -> in[0] - in[1],
                Because.Input.of("pad diameter", diameter),
                geometry.holeInput());
        numbers.put(NumberName.OVER_HOLE, over);
        double least = ask.rules().value("pad.over-hole-least_mm");
        double most = ask.rules().value("pad.over-hole-most_mm");
        boolean unusual = over.value() < least - 2 * over.u() || over.value() > most + 2 * over.u();
        if (unusual && !ask.hole().octaveVent()) {
            warnings.add(warn(String.format(
                    Locale.ROOT,
                    "%s: a %.1f pad is %.1f mm wider than its hole, usual is %.1f to %.1f; look for a typing error",
                    ask.display(),
                    diameter.value(),
                    over.value(),
                    least,
                    most)));
        }
    }

    private void ovality(List<PlannedNumber> two, Map<NumberName, PlannedNumber> numbers, List<Warning> warnings) {
        PlannedNumber oval = reasons.derive(
                ask.place() + "/ovality",
                "difference of the two inside diameters",
                "mm",
                in -> in[0] - in[1],
                Because.Input.of("first", two.getFirst()),
                Because.Input.of("second", two.getLast()));
        PlannedNumber size =
                new PlannedNumber(Math.abs(oval.value()), "mm", oval.u(), oval.because(), null, null, null);
        numbers.put(NumberName.OVALITY, size);
        if (size.value() > ask.rules().value("pad.oval_mm")) {
            warnings.add(warn(String.format(
                    Locale.ROOT,
                    "%s: the cup is oval by %.2f mm; look at it before ordering",
                    ask.display(),
                    size.value())));
        }
    }

    private Warning warn(String words) {
        return new Warning(Warning.Sort.PAD_FIT, words, List.of(ask.place()));
    }
}
