package hornwright.bench.archive;

import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import hornwright.engines.belief.Standing;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What most probably left the factory at one place of one horn.
 *
 * <p>Grade and probability are two answers and never share a sentence: {@link #gradeInWords} and {@link #chanceInWords}.
 *
 * @param material most probable material; null is a gap: nobody has looked
 * @param probabilities of every material seen at this place, averaged over all ways the change-overs may lie
 * @param era serials of the horns this answer rests on; null for a gap
 * @param neighbours nearest serials looked at below and above; null for a gap, one number where it was seen or lies outside
 * @param changeOver the interval of the change nearest to this serial; null when none is likely
 * @param habit set when at this serial the works used more than one material side by side
 * @param thicknessAtLeastMm middle of what was measured in the era; packed since, so it was at least this
 * @param evidenceIds looks and statements the grade was counted from
 */
public record AsBuiltAt(
        String place,
        long serial,
        @Nullable String material,
        Map<String, Double> probabilities,
        Grading grading,
        Standing standing,
        @Nullable SerialRange era,
        @Nullable SerialRange neighbours,
        @Nullable ChangeOver changeOver,
        @Nullable Habit habit,
        @Nullable String colour,
        @Nullable Double thicknessAtLeastMm,
        @Nullable String adhesive,
        @Nullable Form shape,
        @Nullable Cut cut,
        Examined examined,
        List<String> evidenceIds) {
    /** Serials between which a change lies with this probability. */
    public record ChangeOver(SerialRange between, String before, String after, double probability) {}

    public AsBuiltAt {
        probabilities = Collections.unmodifiableMap(new LinkedHashMap<>(probabilities));
        evidenceIds = List.copyOf(evidenceIds);
    }

    public Grade grade() {
        return grading.grade();
    }

    public boolean isGap() {
        return material == null;
    }

    /** Probability of the most probable material; 0 for a gap. */
    public double probability() {
        return material == null ? 0 : probabilities.getOrDefault(material, 0.0);
    }

    /** The grade in words, without the probability. */
    public String gradeInWords() {
        return grading.inWords();
    }

    /** The probability in words, without the grade. */
    public String chanceInWords() {
        if (material == null) {
            return "nobody has looked at this place yet";
        }
        if (probabilities.isEmpty()) {
            return material + " at " + serial + ": no horn looked at, so no probability";
        }
        return "%s at %d: probability %s, %s"
                .formatted(
                        material,
                        serial,
                        rounded(probability()),
                        standing.name().toLowerCase(Locale.ROOT));
    }

    /** Two places, and never a certainty. */
    private static String rounded(double probability) {
        if (probability > 0.995) {
            return "above 0.99";
        }
        return probability < 0.005 ? "below 0.01" : String.format(Locale.ROOT, "%.2f", probability);
    }
}
