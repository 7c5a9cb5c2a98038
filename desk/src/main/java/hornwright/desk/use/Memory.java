package hornwright.desk.use;

import hornwright.bench.job.Folding;
import hornwright.bench.job.History;
import hornwright.bench.job.Posted;
import hornwright.bench.job.StreamName;
import hornwright.desk.journal.EditJson;
import hornwright.desk.journal.Entry;
import hornwright.desk.journal.Journal;
import hornwright.desk.journal.Unusable;
import java.util.List;

/** One stream as it is now, held ready and brought up to date edit by edit. */
final class Memory<S> {
    private final Journal journal;
    private final StreamName stream;
    private History<S> history;

    Memory(Journal journal, StreamName stream, Folding<S> folding) {
        this.journal = journal;
        this.stream = stream;
        this.history = History.none(folding);
    }

    /** With everything kept up to now, whoever kept it. */
    synchronized History<S> now() {
        history = after(history, journal.read(stream, history.seq()));
        return history;
    }

    /** As it will be after these entries, which may yet be rolled back. */
    synchronized History<S> after(List<Entry> fresh) {
        History<S> before = now();
        return after(
                before,
                fresh.stream().filter(entry -> entry.seq() > before.seq()).toList());
    }

    private History<S> after(History<S> before, List<Entry> fresh) {
        try {
            if (before.seq() == 0) {
                return before.withAll(fresh.stream().map(Memory::posted).toList());
            }
            History<S> grown = before;
            for (Entry entry : fresh) {
                grown = grown.advance(posted(entry));
            }
            return grown;
        } catch (IllegalStateException | IllegalArgumentException e) {
            throw new Unusable("The edits of %s do not add up: %s".formatted(stream, e.getMessage()), e);
        }
    }

    static Posted posted(Entry entry) {
        return switch (EditJson.read(entry)) {
            case EditJson.Read.Known known ->
                new Posted(entry.seq(), entry.at(), entry.hand().who(), known.edit());
            case EditJson.Read.Unknown unknown ->
                throw new Unusable("Edit %d of %s (%s, version %d) was written by a newer program."
                        .formatted(entry.seq(), entry.stream(), unknown.kind(), unknown.version()));
        };
    }
}
