package hornwright.desk.use;

import hornwright.bench.job.WorkRecorded;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;

/** Writes down work that changes what was measured, or signs a step off. */
public record RecordWork(Shop shop) {
    /** @param of the key, cup, hole, link or place it was done to; for a sign-off the step */
    public Saved record(String jobId, Form form, WorkKind kind, String of) {
        return shop.saveJob(jobId, form, new WorkRecorded(new WorkDone(FreshId.of("w", form), kind, of, null)));
    }
}
