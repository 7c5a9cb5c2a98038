package hornwright.bench.job;

import java.time.Instant;

/**
 * An edit with the stamp it got when it was kept. The order of edits is their {@code seq}, counted from 1 within the
 * stream; the clock is only told, never sorted by. {@code who} is a person's id, never a name.
 */
public record Posted(long seq, Instant at, String who, Edit edit) {
    public Posted {
        if (seq < 1) {
            throw new IllegalArgumentException("edits are counted from 1, not " + seq);
        }
    }
}
