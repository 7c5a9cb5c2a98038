package hornwright.desk.use;

import hornwright.bench.job.Arrival;
import hornwright.bench.job.ArrivalAmended;

/** Puts right whose horn it is and what is wrong with it. */
public record AmendArrival(Shop shop) {
    public Saved amend(String jobId, Form form, Arrival arrival) {
        return shop.saveJob(jobId, form, new ArrivalAmended(arrival));
    }
}
