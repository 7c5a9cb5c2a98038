package hornwright.bench.archive;

import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import org.jspecify.annotations.Nullable;

/**
 * What was seen at one place of one witness, and how it was seen.
 *
 * @param material "none" when the place was looked at and is bare
 * @param thicknessAtLeastMm as measured now; old cork and felt is packed, so it was at least this
 * @param citation where the look is recorded
 * @param file hash of the photograph, if there is one
 */
public record Observation(
        String id,
        String witness,
        String place,
        String material,
        @Nullable String colour,
        @Nullable Double thicknessAtLeastMm,
        @Nullable String adhesive,
        @Nullable Form shape,
        @Nullable Cut cut,
        Means means,
        Hand hand,
        Bearing bearing,
        Origin origin,
        Interest interest,
        @Nullable String citation,
        @Nullable String file) {
    /** This look as evidence on whether the place had a given material. */
    Evidence on(String claimed, Witness witness) {
        return new Evidence(
                id,
                means,
                hand,
                bearing,
                material.equals(claimed) ? Stance.SUPPORTS : Stance.CONTRADICTS,
                origin,
                interest,
                witness.integrity(),
                SerialRange.one(witness.serial()),
                citation,
                file,
                null);
    }
}
