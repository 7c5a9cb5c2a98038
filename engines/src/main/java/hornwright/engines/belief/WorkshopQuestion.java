package hornwright.engines.belief;

import java.util.HashSet;
import java.util.List;

/**
 * What was seen along the serial numbers of a works, and where an answer is wanted. Sightings at one serial are of one
 * horn, which had one material.
 *
 * @param materials everything that could have been there, each once
 * @param at serials an answer is wanted for, in any order
 */
public record WorkshopQuestion(List<Sighting> observations, List<String> materials, Workshop assumed, List<Long> at) {
    public WorkshopQuestion {
        observations = List.copyOf(observations);
        materials = List.copyOf(materials);
        at = List.copyOf(at);
        if (materials.isEmpty()) {
            throw new IllegalArgumentException("at least one material must be listed");
        }
        HashSet<String> listed = new HashSet<>(materials);
        if (listed.size() < materials.size()) {
            throw new IllegalArgumentException("a material is listed twice");
        }
        for (Sighting seen : observations) {
            if (!listed.contains(seen.material())) {
                throw new IllegalArgumentException("material '" + seen.material() + "' is not listed");
            }
        }
    }
}
