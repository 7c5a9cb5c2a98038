package hornwright.desk.use;

import hornwright.bench.job.HornIdentified;
import hornwright.bench.job.Identity;

/** Puts right which horn it is. */
public record IdentifyHorn(Shop shop) {
    public Saved identify(String jobId, Form form, Identity identity) {
        Keyworks.of(identity);
        return shop.saveJob(jobId, form, new HornIdentified(identity));
    }
}
