package hornwright.desk.use;

import hornwright.bench.job.History;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.Undone;
import java.util.Optional;

/** Undoes one edit of a stream, unless a later one stands on it. */
public record Undo(Shop shop) {
    /** Undoing an undo brings the edit back. The form's seq does not matter: what counts is what stands now. */
    public Saved undo(StreamName stream, Form form, long seq) {
        while (true) {
            History<?> history = shop.history(stream);
            if (shop.data().journal().withKey(form.key()).isEmpty()) {
                Optional<String> why = history.whyNotUndo(seq);
                if (why.isPresent()) {
                    return new Saved.Refused(why.get());
                }
            }
            Saved saved = shop.save(stream, new Form(history.seq(), form.hand(), form.key()), new Undone(seq));
            if (!(saved instanceof Saved.Conflict)) {
                return saved;
            }
        }
    }

    public Saved undoOfJob(String jobId, Form form, long seq) {
        shop.opened(jobId);
        return undo(StreamName.ofJob(jobId), form, seq);
    }
}
