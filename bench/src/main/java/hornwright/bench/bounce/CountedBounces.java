package hornwright.bench.bounce;

import hornwright.bench.material.Fit;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.material.Sheet;
import hornwright.engines.action.Action;
import hornwright.engines.quantity.Outcome;
import java.util.List;

/**
 * A key pressed shut, let go, and its bounces counted by ear, several times: each click after the first.
 *
 * @param counts one for each time
 */
public record CountedBounces(OpeningKey key, List<Integer> counts) {
    private static final double LEAST = 0.02;
    private static final double MOST = 0.98;
    private static final int HALVINGS = 30;

    public CountedBounces {
        counts = List.copyOf(counts);
        if (counts.isEmpty() || counts.stream().anyMatch(count -> count < 0)) {
            throw new IllegalArgumentException("at least one count, none below zero");
        }
    }

    /**
     * The restitution of what it lands on. Each count leaves a range in which the motion has as many rebounds that an ear
     * can tell; the middles are averaged, and widths and scatter make the uncertainty.
     */
    public Outcome<Fit> restitution(Materials materials) {
        List<Sheet> sheets = key.cushion().sheets();
        List<String> names = sheets.stream().map(Sheet::material).distinct().toList();
        if (names.size() != 1) {
            return Outcome.missing("the same with one material only under the foot");
        }
        double sum = 0;
        double squares = 0;
        double widths = 0;
        for (int count : counts) {
            double low = reaching(count, materials);
            double high = reaching(count + 1, materials);
            double middle = (low + high) / 2;
            sum += middle;
            squares += middle * middle;
            widths += (high - low) * (high - low);
        }
        int n = counts.size();
        double mean = sum / n;
        double u = Math.sqrt((widths / n / 12 + Math.max(0, squares / n - mean * mean)) / n);
        if (!(u > 0)) {
            return Outcome.missing("another key: so many bounces fit no restitution here");
        }
        String how =
                "%s let go %d times, rebounds %s".formatted(key.key().name().display(), n, counts);
        return Outcome.of(new Fit(names.getFirst(), Property.RESTITUTION, mean, u, how), "bounces counted");
    }

    /** The least restitution with at least so many rebounds. */
    private double reaching(int count, Materials materials) {
        if (count <= 0) {
            return LEAST;
        }
        double low = LEAST;
        double high = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (heard(middle, materials) >= count) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return (low + high) / 2;
    }

    /** How many rebounds an ear tells by their clicks. */
    private long heard(double restitution, Materials materials) {
        double least = 1e-3 * materials.rules().value("bounce.seen_mm");
        return Action.reckon(key.input(materials, restitution)).rebounds().stream()
                .filter(rebound -> rebound.height() >= least)
                .count();
    }
}
