package hornwright.bench.horn;

import java.util.List;

/**
 * A written note with the holes that stand open for it. Peak is the resonance that sounds, 1 the lowest.
 */
public record Fingering(
        String id, String written, String label, int register, int peak, boolean standard, List<String> open)
        implements Identified {
    public Fingering {
        open = List.copyOf(open);
    }
}
