package hornwright.desk.use;

import hornwright.bench.job.Decided;
import hornwright.bench.job.DecisionDropped;
import hornwright.bench.survey.Decision;

/** Settles something, above every proposal of the plan. */
public record Decide(Shop shop) {
    public Saved decide(String jobId, Form form, Decision decision) {
        return shop.saveJob(jobId, form, new Decided(decision));
    }

    /** Lets the plan's proposal hold again; {@code about} is {@link Decision#about}. */
    public Saved takeBack(String jobId, Form form, String about) {
        return shop.saveJob(jobId, form, new DecisionDropped(about));
    }
}
