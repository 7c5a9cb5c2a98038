package hornwright.bench.survey;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One measurement on the horn.
 *
 * @param id stable in the job, such as {@code r.010}
 * @param kind what was measured
 * @param of id of the cup, hole, key, link or place it was measured on
 * @param point where on it, in words: "along the hinge"
 * @param observed what was read
 * @param instrument what it was read with
 * @param raw exactly what was typed
 * @param who initials of who read it
 * @param when when it was read; null counts as before any work was done
 * @param stage how far the work had come
 * @param series readings of one series repeat each other and are averaged; null stands alone
 */
public record Reading(
        String id,
        ReadingKind kind,
        String of,
        String point,
        Observed observed,
        String instrument,
        String raw,
        String who,
        @Nullable Instant when,
        Stage stage,
        @Nullable String series) {
    /** A reading with nothing but its content. */
    public static Reading of(String id, ReadingKind kind, String of, Observed observed) {
        return new Reading(id, kind, of, "", observed, kind.usualInstrument(), "", "", null, Stage.ARRIVAL, null);
    }
}
