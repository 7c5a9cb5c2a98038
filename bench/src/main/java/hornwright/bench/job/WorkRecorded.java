package hornwright.bench.job;

import hornwright.bench.survey.WorkDone;

/** Work done to the horn, or a step signed off. */
@Kind(word = "work-recorded")
public record WorkRecorded(WorkDone work) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("work." + work.id());
    }

    @Override
    public String inWords() {
        return "%s: %s".formatted(work.kind().word(), work.of());
    }
}
