package hornwright.bench.survey;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One session in which a horn was played: how far each note lay from its place, how the notes answered, and under what
 * conditions. The sound itself is not kept.
 *
 * @param id stable in the job, such as {@code p.k3f9q2x0a}
 * @param heardBy how the notes came in
 * @param notes every playing of a note, in the order they were played; a note may come more than once
 * @param leftOut what was heard and not taken, a sentence each
 * @param answers how notes answer in the player's words, by fingering
 * @param who initials of who played; empty when not said
 * @param when when it was played; null when not said
 * @param stage how far the work had come
 */
public record PlayTest(
        String id,
        Conditions conditions,
        HeardBy heardBy,
        List<Playing> notes,
        List<String> leftOut,
        Map<String, Symptom> answers,
        String who,
        @Nullable Instant when,
        Stage stage) {
    public PlayTest {
        notes = List.copyOf(notes);
        leftOut = List.copyOf(leftOut);
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /**
     * One playing of one note.
     *
     * @param fingering id in the keywork
     * @param cents sharp positive, from its place in equal temperament over the reference
     * @param spreadCents half the range the pitch wandered over while it lasted; null when nobody measured that
     */
    public record Playing(
            String fingering, double cents, @Nullable Double spreadCents) {
        public Playing {
            if (!Double.isFinite(cents)) {
                throw new IllegalArgumentException("a note played has cents, got " + cents);
            }
        }
    }

    /**
     * What the tuning depends on besides the horn.
     *
     * @param mouthpiece in the player's words
     * @param reed in the player's words
     * @param insertionMm how far the mouthpiece stands on the cork; null when not measured
     * @param temperatureDegC of the room; null when not measured
     * @param referenceHz frequency of A4
     */
    public record Conditions(
            String mouthpiece,
            String reed,
            @Nullable Double insertionMm,
            @Nullable Double temperatureDegC,
            double referenceHz) {
        public Conditions {
            if (!(referenceHz >= 390 && referenceHz <= 490)) {
                throw new IllegalArgumentException("A4 lies between 390 and 490 Hz, got " + referenceHz);
            }
        }
    }
}
