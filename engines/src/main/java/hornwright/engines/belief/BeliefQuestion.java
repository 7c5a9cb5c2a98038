package hornwright.engines.belief;

import java.util.HashSet;
import java.util.List;

/**
 * What was seen along the serial numbers, and where an answer is wanted.
 *
 * @param materials everything that could have been there, each once
 * @param prior Dirichlet parameter of each material in each segment, above 0
 * @param change probability of a change after any one position, 0 to 1
 * @param at serials an answer is wanted for, in any order
 */
public record BeliefQuestion(
        List<Sighting> observations, List<String> materials, double prior, double change, List<Long> at) {
    public BeliefQuestion {
        observations = List.copyOf(observations);
        materials = List.copyOf(materials);
        at = List.copyOf(at);
        if (materials.isEmpty()) {
            throw new IllegalArgumentException("at least one material must be listed");
        }
        if (new HashSet<>(materials).size() < materials.size()) {
            throw new IllegalArgumentException("a material is listed twice");
        }
        if (!(prior > 0 && prior < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("prior must be above 0, not " + prior);
        }
        if (!(change >= 0 && change <= 1)) {
            throw new IllegalArgumentException("change must lie between 0 and 1, not " + change);
        }
        for (Sighting seen : observations) {
            if (!materials.contains(seen.material())) {
                throw new IllegalArgumentException("material '" + seen.material() + "' is not listed");
            }
        }
    }
}
