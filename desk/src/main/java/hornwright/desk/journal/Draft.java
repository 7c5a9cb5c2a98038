package hornwright.desk.journal;

import hornwright.bench.job.Edit;
import hornwright.bench.job.StreamName;

/** An edit that is not kept yet, with the seq its writer believed the stream had reached just before it. */
public record Draft(StreamName stream, long expectedSeq, Edit edit) {
    public Draft {
        if (!edit.belongsIn(stream)) {
            throw new IllegalArgumentException(
                    "%s does not belong in %s".formatted(edit.getClass().getSimpleName(), stream));
        }
    }
}
