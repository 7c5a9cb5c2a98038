package hornwright.bench.job;

/** A change to one horn on the bench. */
public sealed interface JobEdit extends Edit
        permits JobOpened,
                JobImported,
                HornIdentified,
                ArrivalAmended,
                ReadingTaken,
                ReadingWithdrawn,
                MaterialsFound,
                Decided,
                DecisionDropped,
                StageReached,
                WorkRecorded,
                PhotoTicked,
                NoteWritten,
                PlayTestTaken,
                PlayTestWithdrawn,
                PhotoTaken,
                OriginalKept,
                PhotoMarked,
                PhotoWithdrawn,
                PartStored,
                Undone {
    @Override
    default boolean belongsIn(StreamName stream) {
        return stream.isJob();
    }
}
