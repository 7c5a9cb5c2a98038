package hornwright.engines.belief;

import java.util.List;

/**
 * What is assumed of a works and of those who look at its horns, before anything was seen.
 *
 * @param errors how often a look of full weight may show another material than the works put in (an old repair that passes
 *     for original, a slip of the eye): a few rates, each as likely as the next beforehand; what was seen decides among
 *     them; each above 0 and below 1/2
 * @param change chance that the works took up another way after any one of the horns looked at, from 0 to 1
 * @param mixing chance that a way of working puts in two or three materials side by side and not one, from 0 to 1
 */
public record Workshop(List<Double> errors, double change, double mixing) {
    private static final double HALF = 0.5;

    public Workshop {
        errors = List.copyOf(errors);
        if (errors.isEmpty() || errors.stream().anyMatch(error -> !(error > 0 && error < HALF))) {
            throw new IllegalArgumentException("each error must lie above 0 and below 0.5, not " + errors);
        }
        if (!(change >= 0 && change <= 1)) {
            throw new IllegalArgumentException("change must lie between 0 and 1, not " + change);
        }
        if (!(mixing >= 0 && mixing <= 1)) {
            throw new IllegalArgumentException("mixing must lie between 0 and 1, not " + mixing);
        }
    }
}
