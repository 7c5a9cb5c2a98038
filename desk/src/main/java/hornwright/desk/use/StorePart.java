package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.JobEdit;
import hornwright.bench.job.PartStored;
import hornwright.desk.json.Faults;
import java.util.List;

/** Writes down where a removed original lies, so that it goes back to its horn and not into a drawer of odd parts. */
public record StorePart(Shop shop) {
    private static final int LONGEST = 120;

    /** What is put into a bag: where it was, and what it is. */
    public record Part(String place, String what) {}

    /** All of them lie in the same store; one edit a place. */
    public Saved store(String jobId, Form form, List<Part> parts, String store) {
        Keywork keywork = Keyworks.of(shop.jobNow(jobId));
        Faults faults = new Faults();
        if (parts.isEmpty()) {
            faults.add("/parts", "nothing is chosen to be put by", "a place of the horn");
        }
        if (store.isBlank() || store.length() > LONGEST) {
            faults.add("/store", "say where they lie, in at most 120 letters", "\"drawer 3, blue box\"");
        }
        for (Part part : parts) {
            if (!keywork.places().contains(part.place())) {
                faults.add(
                        "/parts/place",
                        "this horn has no place \"" + part.place() + "\"",
                        "\"" + keywork.places().list().getFirst().id() + "\"");
            }
            if (part.what().length() > LONGEST) {
                faults.add("/parts/what", "what it is takes at most 120 letters", "\"kid leather pad\"");
            }
        }
        faults.refuseIfAny();
        return shop.saveJob(
                jobId,
                form,
                parts.stream()
                        .map(part -> new PartStored(part.place(), part.what(), store.strip()))
                        .toArray(JobEdit[]::new));
    }

    /** It is kept no longer: given back, or put on again. */
    public Saved takeOut(String jobId, Form form, String place) {
        return shop.saveJob(jobId, form, new PartStored(place, "", ""));
    }
}
