package hornwright.desk.use;

import hornwright.bench.job.Edit;
import hornwright.bench.job.Posted;
import hornwright.bench.job.StreamName;
import java.time.Instant;
import java.util.List;

/** What became of a form. Only {@link Kept} changed anything. */
public sealed interface Saved {

    /**
     * On disk.
     *
     * @param stream the first stream that was written to
     * @param seq how far that stream has come with it
     * @param at when it was committed
     * @param repeated when an earlier try had already kept it
     */
    record Kept(StreamName stream, long seq, Instant at, List<Posted> edits, boolean repeated) implements Saved {}

    /**
     * Somebody else changed the same thing since the form was opened. Changes of other things never end here: they are
     * merged.
     */
    record Conflict(List<Posted> theirs, List<Edit> mine) implements Saved {}

    /** It may not be done; the sentence says why. */
    record Refused(String why) implements Saved {}
}
