package hornwright.bench.plan.pads;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Finds the thickness. Adhesive is the adjusting variable: between the thinnest film that still covers the back and the
 * thickest that stays put, a pad may be thicker or thinner. A window is claimed only when it is wider than its own
 * uncertainty; until then the thickness is no more than a class.
 */
final class ThicknessChoice {
    /** Stocked thicknesses further off than this are no choice for the cup. */
    private static final double NEAR_MM = 0.8;

    /** Times its uncertainty a window is narrowed at each end: a pad at the very end still floats 95 times in 100. */
    private static final double SURE = 1.645;

    private final PadQuestion ask;
    private final PadRoom room;
    private final @Nullable PlannedNumber diameter;
    private final Reasons reasons;

    ThicknessChoice(PadQuestion ask, PadRoom room, @Nullable PlannedNumber diameter, Reasons reasons) {
        this.ask = ask;
        this.room = room;
        this.diameter = diameter;
        this.reasons = reasons;
    }

    PadWindow find() {
        PlannedNumber wanted = window(wanted());
        List<PadChoice> choices = new ArrayList<>();
        stocked(wanted.value()).forEach((thickness, count) -> choices.add(choice(wanted, thickness, count)));
        Optional<PlannedNumber> chosen = chosen(wanted, choices);
        return new PadWindow(
                wanted,
                choices,
                chosen.orElse(null),
                chosen.map(c -> left(ask.place() + "/float", c)).orElse(null));
    }

    private PlannedNumber wanted() {
        String rule = ask.hole().octaveVent() ? "adhesive.small-typical_mm" : "adhesive.typical_mm";
        PlannedNumber film = Aims.patternUnlessSet(
                ask, reasons, "adhesive film", rule, cup -> cup.adhesive().thicknessMm());
        PlannedNumber good = reasons.rule(ask.rules(), "pad.thickness-within_mm");
        double spread = good.value() / Math.sqrt(3);
        return reasons.derive(
                ask.place() + "/thickness",
                "room - film aimed at; the window runs from room - thickest film to room - thinnest film, narrowed at"
                        + " each end so that a pad there still floats 95 times in 100, and is not claimed when it would be narrower than that",
                "mm",
                in -> in[0] - in[1] + in[4] - good.value(),
                Because.Input.of("room for pad and adhesive", room.room()),
                new Because.Input("film aimed at", film.value(), "mm", 0, film.because()),
                Because.Input.of("thinnest film", reasons.rule(ask.rules(), ask.leastFilm())),
                Because.Input.of("thickest film", reasons.rule(ask.rules(), "adhesive.most_mm")),
                new Because.Input("a pad is good to", good.value(), "mm", spread, good.because()));
    }

    private PlannedNumber window(PlannedNumber wanted) {
        double low = room.room().value() - ask.rules().value("adhesive.most_mm") + sure() * wanted.u();
        double high = room.room().value() - ask.rules().value(ask.leastFilm()) - sure() * wanted.u();
        double least = Math.max(wanted.u(), ask.rules().value("pad.thickness-within_mm"));
        return high - low > least && low > 0 ? wanted.within(low, high) : wanted;
    }

    /** An octave pad is stuck, not floated, and a film a little thin does it no harm. */
    private double sure() {
        return ask.hole().octaveVent() ? 1 : SURE;
    }

    /** Thickness to count of pads of the right diameter; a thickness kept in other diameters counts 0. */
    private NavigableMap<Double, Integer> stocked(double wanted) {
        NavigableMap<Double, Integer> counts = new TreeMap<>();
        ask.stock().of(StockKind.PAD).forEach(pad -> {
            Double thickness = pad.thicknessMm();
            if (thickness != null && Math.abs(thickness - wanted) <= NEAR_MM) {
                counts.merge(thickness, fits(pad) ? pad.count() : 0, Integer::sum);
            }
        });
        return counts;
    }

    private boolean fits(StockItem pad) {
        Double size = pad.diameterMm();
        return diameter != null && size != null && Math.abs(size - diameter.value()) < 1e-6;
    }

    private PadChoice choice(PlannedNumber wanted, double thickness, int count) {
        String id = String.format(Locale.ROOT, "%s/left at %s", ask.place(), thickness);
        PlannedNumber left = left(id, stocked(String.format(Locale.ROOT, "pad of %s mm", thickness), thickness));
        return new PadChoice(thickness, count, left, fit(wanted, thickness));
    }

    private static PadChoice.Fit fit(PlannedNumber wanted, double thickness) {
        Double low = wanted.low();
        Double high = wanted.high();
        if (low == null || high == null) {
            return PadChoice.Fit.NOT_KNOWN;
        }
        if (thickness < low) {
            return PadChoice.Fit.TOO_MUCH_LEFT;
        }
        return thickness > high ? PadChoice.Fit.TOO_LITTLE_LEFT : PadChoice.Fit.WORKS;
    }

    /** A person's choice first; else of what works the nearest to what is wanted, on the shelf before to be ordered. */
    private Optional<PlannedNumber> chosen(PlannedNumber wanted, List<PadChoice> choices) {
        Double decided = ask.decidedMm();
        if (decided != null) {
            Because.Leaf leaf =
                    new Because.Decided("decided thickness of " + ask.place(), "thickness settled by a person");
            return Optional.of(reasons.leaf(leaf, decided, "mm", 0));
        }
        return choices.stream()
                .filter(choice -> choice.fit() == PadChoice.Fit.WORKS)
                .min(Comparator.<PadChoice>comparingInt(choice -> choice.onShelf() > 0 ? 0 : 1)
                        .thenComparingDouble(choice -> Math.abs(choice.thicknessMm() - wanted.value())))
                .map(choice -> reasons.derive(
                        ask.place() + "/chosenThickness",
                        "of the stocked thicknesses inside the window the one nearest to what is wanted",
                        "mm",
                        in -> in[0],
                        Because.Input.of(
                                "stocked", stocked("pad of " + choice.thicknessMm() + " mm", choice.thicknessMm())),
                        new Because.Input("wanted", wanted.value(), "mm", wanted.u(), wanted.because())));
    }

    private PlannedNumber stocked(String item, double thickness) {
        return reasons.leaf(new Because.FromStock(item, "a thickness the shop keeps", item), thickness, "mm", 0);
    }

    private PlannedNumber left(String id, PlannedNumber pad) {
        PlannedNumber good = reasons.rule(ask.rules(), "pad.thickness-within_mm");
        double spread = good.value() / Math.sqrt(3);
        return reasons.derive(
                id,
                "room - pad thickness: what the adhesive fills",
                "mm",
                in -> in[0] - in[1] + in[2] - good.value(),
                Because.Input.of("room for pad and adhesive", room.room()),
                Because.Input.of("pad", pad),
                new Because.Input("a pad is good to", good.value(), "mm", spread, good.because()));
    }
}
