package hornwright.bench.archive;

import hornwright.bench.horn.Voice;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Somebody says, or has tried, that a part fits these places, or that it does not; the stance of the evidence tells which.
 *
 * @param part what fits, so that it can be bought or looked for: "needle spring, blued steel"
 * @param places at least one; ids of the keywork
 * @param sizeMm the size that decides: thread, diameter or thickness, mm; null where nobody measured it
 */
public record Fitting(
        FitKind kind,
        Voice voice,
        List<String> places,
        String part,
        @Nullable Double sizeMm,
        Evidence evidence) {
    public Fitting {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("what fits nowhere is no claim");
        }
        if (part.isBlank()) {
            throw new IllegalArgumentException("a claim names the part");
        }
        if (sizeMm != null && !(sizeMm > 0)) {
            throw new IllegalArgumentException("a size is above 0, got " + sizeMm);
        }
    }

    /** Whether another speaks of the same part in the same voice. */
    boolean isOf(Fitting other) {
        return kind == other.kind
                && voice == other.voice
                && part.equals(other.part)
                && java.util.Objects.equals(sizeMm, other.sizeMm);
    }
}
