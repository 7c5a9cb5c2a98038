package hornwright.bench.archive;

import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import org.jspecify.annotations.Nullable;

/** What was seen, the same at every place one stroke of the brush goes over. */
public record Sight(
        String material,
        @Nullable String colour,
        @Nullable Double thicknessAtLeastMm,
        @Nullable String adhesive,
        @Nullable Form shape,
        @Nullable Cut cut) {
    static Sight of(Observation seen) {
        return new Sight(seen.material(), seen.colour(), null, seen.adhesive(), seen.shape(), seen.cut());
    }
}
