package hornwright.desk.journal;

import hornwright.bench.job.StreamName;
import java.time.Instant;

/** One row of the journal, exactly as stored; {@code edit} is the JSON text over which the hash was taken. */
public record Entry(
        long position,
        StreamName stream,
        long seq,
        Instant at,
        Hand hand,
        String kind,
        int version,
        String edit,
        String prevHash,
        String hash,
        String key) {

    /** The same row, its place in the chain filled in. */
    Entry sealedAfter(String prevHash) {
        Entry placed = chained(prevHash, "");
        return placed.chained(prevHash, Chain.hash(placed));
    }

    private Entry chained(String prevHash, String hash) {
        return new Entry(position, stream, seq, at, hand, kind, version, edit, prevHash, hash, key);
    }
}
