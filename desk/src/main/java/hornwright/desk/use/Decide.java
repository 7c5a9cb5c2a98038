package hornwright.desk.use;

import hornwright.bench.job.Decided;
import hornwright.bench.job.DecisionDropped;
import hornwright.bench.job.Edit;
import hornwright.bench.survey.Decision;
import java.util.List;

/** Settles something, above every proposal of the plan. */
public record Decide(Shop shop) {
    public Saved decide(String jobId, Form form, Decision decision) {
        return shop.saveJob(jobId, form, new Decided(decision));
    }

    /** Lets the plan's proposal hold again; {@code about} is {@link Decision#about}. */
    public Saved takeBack(String jobId, Form form, String about) {
        return shop.saveJob(jobId, form, new DecisionDropped(about));
    }

    /** One reason that settles the same of several places. */
    public Saved decide(String jobId, Form form, List<Decision> decisions) {
        return shop.saveJob(jobId, form, decisions.stream().map(Decided::new).toArray(Edit[]::new));
    }

    public Saved takeBack(String jobId, Form form, List<String> about) {
        return shop.saveJob(
                jobId, form, about.stream().map(DecisionDropped::new).toArray(Edit[]::new));
    }
}
