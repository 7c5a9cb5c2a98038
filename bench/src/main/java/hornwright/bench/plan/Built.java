package hornwright.bench.plan;

import hornwright.bench.archive.Grade;
import org.jspecify.annotations.Nullable;

/**
 * What most probably left the factory at a place.
 *
 * @param material null is a gap: nobody has looked and the pattern does not say
 * @param thicknessMm null when nobody knows
 * @param atLeast whether that was measured on old, packed material, which was thicker when it was new
 * @param horns of the same years looked at and found alike; 0 when only the keywork says so
 * @param says how well this is known, in words: the grade, or that it is only the pattern of the keywork
 * @param fromArchive whether witnesses or documents stand behind it, and not the keywork alone
 * @param grade of the evidence; null when only the keywork says so
 */
public record Built(
        @Nullable String material,
        @Nullable String colour,
        @Nullable Double thicknessMm,
        boolean atLeast,
        int horns,
        String says,
        boolean fromArchive,
        @Nullable Grade grade) {}
