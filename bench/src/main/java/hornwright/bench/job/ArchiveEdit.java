package hornwright.bench.job;

/** A change to what is known of horns like these. */
public sealed interface ArchiveEdit extends Edit
        permits WitnessAdded,
                ObservationsMade,
                StatementAdded,
                FittingAdded,
                ConflictResolved,
                SearchLogged,
                EvidenceBroughtIn,
                YearRowPut,
                YearRowsBroughtIn,
                YearRowTaken,
                Undone {
    @Override
    default boolean belongsIn(StreamName stream) {
        return stream.equals(StreamName.ARCHIVE);
    }
}
