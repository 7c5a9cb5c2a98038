package hornwright.bench.job;

import java.util.Optional;

/** How the edits of a job's stream add up. There is no job before it is opened or imported. */
public record JobFold(String jobId) implements Folding<Optional<Job>> {
    @Override
    public Optional<Job> start() {
        return Optional.empty();
    }

    @Override
    public Optional<Job> with(Optional<Job> state, Posted posted) {
        return Optional.of(
                switch (posted.edit()) {
                    case JobOpened opened -> Job.opened(jobId, posted.at(), opened.identity(), opened.arrival());
                    case JobImported imported -> imported.job().as(jobId);
                    case JobEdit edit -> changed(state.orElseThrow(() -> unopened(posted)), edit, posted);
                    case ArchiveEdit other -> throw stray(other);
                    case StockEdit other -> throw stray(other);
                    case RulesEdit other -> throw stray(other);
                });
    }

    private static Job changed(Job job, JobEdit edit, Posted posted) {
        return switch (edit) {
            case HornIdentified identified -> job.with(identified.identity());
            case ArrivalAmended amended -> job.with(amended.arrival());
            case ReadingTaken taken -> Course.measured(job, taken.stamped(posted));
            case ReadingWithdrawn withdrawn -> Course.withdrawn(job, withdrawn.reading());
            case MaterialsFound found -> job.with(job.findings().with(found.places(), found.groups()));
            case Decided decided -> Course.settled(job, decided.decision());
            case DecisionDropped dropped -> Course.dropped(job, dropped.about());
            case StageReached reached -> Course.reached(job, reached.stage());
            case WorkRecorded recorded -> Course.worked(job, recorded.stamped(posted));
            case PhotoTicked ticked ->
                ticked.taken()
                        ? job.withPhoto(new PhotoTick(ticked.shot(), ticked.file()))
                        : job.withoutPhoto(ticked.shot());
            case NoteWritten note -> job.withNote(note.about(), note.text());
            case PlayTestTaken taken -> job.with(taken.stamped(posted));
            case PlayTestWithdrawn withdrawn -> job.withoutPlayTest(withdrawn.test());
            case PhotoTaken taken -> job.with(job.keeping().with(taken.stamped(posted)));
            case OriginalKept kept -> job.with(job.keeping().original(kept.photo(), kept.file()));
            case PhotoMarked marked -> job.with(job.keeping().marked(marked.photo(), marked.marks()));
            case PhotoWithdrawn withdrawn -> job.with(job.keeping().withoutPhoto(withdrawn.photo()));
            case PartStored stored -> job.with(job.keeping().with(stored.stamped(posted)));
            case JobOpened opened -> throw stray(opened);
            case JobImported imported -> throw stray(imported);
            case Undone undone -> throw stray(undone);
        };
    }

    private IllegalStateException unopened(Posted posted) {
        return new IllegalStateException("edit %d of job %s comes before it is opened".formatted(posted.seq(), jobId));
    }

    private static IllegalStateException stray(Edit edit) {
        return new IllegalStateException("'%s' does not change a job".formatted(edit.inWords()));
    }
}
