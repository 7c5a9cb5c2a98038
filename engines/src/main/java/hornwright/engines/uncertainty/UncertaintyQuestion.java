package hornwright.engines.uncertainty;

import java.util.List;

/**
 * A formula, its inputs, and how to look at it.
 *
 * @param inputs in the order of the model's ids
 * @param draws 2 or more
 * @param seed the same seed draws the same numbers
 * @param coverage share the intervals shall hold, above 0 and below 1
 */
public record UncertaintyQuestion(List<InputQuantity> inputs, Model model, int draws, long seed, double coverage) {
    public UncertaintyQuestion {
        inputs = List.copyOf(inputs);
        if (inputs.size() != model.inputs() || draws < 2 || !(coverage > 0 && coverage < 1)) {
            throw new IllegalArgumentException("one input for each id, 2 draws or more, coverage between 0 and 1");
        }
    }
}
