package hornwright.engines.belief;

import java.util.Objects;

/**
 * One look at one serial number: which material was there, counted as {@code weight} observations.
 *
 * @param weight 0 to 1; a weak witness counts less than a strong one
 */
public record Sighting(long serial, String material, double weight) {
    public Sighting {
        Objects.requireNonNull(material);
        if (!(weight >= 0 && weight <= 1)) {
            throw new IllegalArgumentException("weight must lie between 0 and 1, not " + weight);
        }
    }
}
