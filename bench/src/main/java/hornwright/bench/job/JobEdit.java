package hornwright.bench.job;

/** A change to one horn on the bench. */
public sealed interface JobEdit extends Edit permits NoteWritten, Undone {
    @Override
    default boolean belongsIn(StreamName stream) {
        return stream.isJob();
    }
}
