package hornwright.bench.job;

import hornwright.bench.survey.WorkDone;

/** Work done to the horn, or a step signed off. */
@Kind(word = "work-recorded")
public record WorkRecorded(WorkDone work) implements JobEdit {
    /** The work with the time it was written down, where it does not say when it was done. */
    WorkDone stamped(Posted posted) {
        return work.when() == null ? new WorkDone(work.id(), work.kind(), work.of(), posted.at()) : work;
    }

    @Override
    public Fields fields() {
        return Fields.of("work." + work.id());
    }

    @Override
    public String inWords() {
        return "%s: %s".formatted(work.kind().word(), work.of());
    }
}
