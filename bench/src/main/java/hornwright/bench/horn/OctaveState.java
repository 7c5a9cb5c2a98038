package hornwright.bench.horn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One state of the octave mechanism: which keys are down, which vent is open, and what stays free at each contact.
 */
public record OctaveState(
        String name, List<String> pressed, @Nullable String openVent, List<Clearance> clearances) {
    public OctaveState {
        pressed = List.copyOf(pressed);
        clearances = List.copyOf(clearances);
    }
}
