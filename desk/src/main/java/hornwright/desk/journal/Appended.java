package hornwright.desk.journal;

import java.util.List;

/** What became of an append. Only {@link Kept} wrote anything, and then everything. */
public sealed interface Appended {

    /** On disk. {@code repeated} when an earlier try with the same key had already put it there. */
    record Kept(List<Entry> entries, boolean repeated) implements Appended {}

    /** Somebody was first: what they wrote since, beside what was about to be written. */
    record Conflict(List<Entry> theirs, List<Draft> mine) implements Appended {}

    /** The key was used before for something else; the caller has a fault. */
    record KeyReused(List<Entry> before, List<Draft> mine) implements Appended {}
}
