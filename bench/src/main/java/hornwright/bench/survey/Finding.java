package hornwright.bench.survey;

import org.jspecify.annotations.Nullable;

/**
 * What is at one place now. Entered blind, before the as-built sheet is shown.
 *
 * @param place id of the place
 * @param material what it is made of; null when missing or not known
 * @param thicknessMm null when not measured; old cork and felt is packed, so this is "at least" for the archive
 * @param assemblyNumber stamped on the part, if any
 * @param photo name of the photograph in the store, if any
 */
public record Finding(
        String place,
        @Nullable String material,
        @Nullable Double thicknessMm,
        @Nullable String colour,
        Condition condition,
        Originality originality,
        @Nullable String assemblyNumber,
        @Nullable String photo) {
    /** A finding with nothing but its material and state. */
    public static Finding of(String place, @Nullable String material, Condition condition, Originality originality) {
        return new Finding(place, material, null, null, condition, originality, null, null);
    }
}
