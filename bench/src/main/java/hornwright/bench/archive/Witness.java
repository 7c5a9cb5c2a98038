package hornwright.bench.archive;

import hornwright.bench.horn.Voice;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A horn somebody looked at, on paper or in the hand.
 *
 * @param built when it was made, as far as known
 * @param integrity of the horn as a whole; single parts are judged one by one
 * @param assemblyNumbers stamped number by part; parts that do not agree came from another horn
 */
public record Witness(
        String id,
        long serial,
        Voice voice,
        String maker,
        String model,
        @Nullable Edtf built,
        Integrity integrity,
        Map<String, String> assemblyNumbers) {
    public Witness {
        assemblyNumbers = Map.copyOf(assemblyNumbers);
    }

    /** Whether two parts carry different assembly numbers. */
    public boolean isMixed() {
        return assemblyNumbers.values().stream().distinct().count() > 1;
    }
}
