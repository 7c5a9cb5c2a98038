package hornwright.engines.pitch;

import java.util.List;

/** What a recording holds. */
public sealed interface Heard {
    /** Notes in order; none when nothing lasted long enough. */
    record Notes(List<Note> notes) implements Heard {
        public Notes {
            notes = List.copyOf(notes);
        }
    }

    /** A recording no note can be read from, and why, as a sentence. */
    record Refused(String why) implements Heard {}
}
