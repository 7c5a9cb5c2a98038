package hornwright.desk.journal;

import hornwright.bench.job.StreamName;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Walks the chain row by row and says in words where it is broken. */
final class ChainCheck {
    private final List<String> faults = new ArrayList<>();
    private final Map<StreamName, Long> reached = new HashMap<>();
    private long position = 0;
    private String hash = Chain.START;

    void next(Entry entry) {
        if (entry.position() != position + 1) {
            faults.add("Position %d follows position %d: rows are missing.".formatted(entry.position(), position));
        }
        if (!entry.prevHash().equals(hash)) {
            faults.add("Position %d does not follow from the row before it.".formatted(entry.position()));
        }
        if (!entry.hash().equals(Chain.hash(entry))) {
            faults.add("Position %d (edit %d of %s) is not as it was written."
                    .formatted(entry.position(), entry.seq(), entry.stream()));
        }
        long before = reached.getOrDefault(entry.stream(), 0L);
        if (entry.seq() != before + 1) {
            faults.add("Edit %d of %s follows edit %d.".formatted(entry.seq(), entry.stream(), before));
        }
        reached.put(entry.stream(), entry.seq());
        position = entry.position();
        hash = entry.hash();
    }

    /** A row that cannot even be read ends the walk. */
    void unreadable(RuntimeException why) {
        faults.add("After position %d the journal cannot be read: %s".formatted(position, why.getMessage()));
    }

    List<String> faults() {
        return List.copyOf(faults);
    }
}
