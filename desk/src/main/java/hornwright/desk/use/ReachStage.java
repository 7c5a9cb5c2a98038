package hornwright.desk.use;

import hornwright.bench.job.StageReached;
import hornwright.bench.survey.Stage;

/** Says how far the work has come. */
public record ReachStage(Shop shop) {
    public Saved reach(String jobId, Form form, Stage stage) {
        return shop.saveJob(jobId, form, new StageReached(stage));
    }
}
