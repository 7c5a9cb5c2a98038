package hornwright.desk.use;

import hornwright.bench.job.ReadingWithdrawn;
import hornwright.desk.json.BadInput;

/** Says that a measurement does not count any more, and why. */
public record WithdrawReading(Shop shop) {
    public Saved withdraw(String jobId, Form form, String reading, String why) {
        if (shop.opened(jobId).edits().stream()
                .noneMatch(posted -> posted.edit().fields().names().contains("reading." + reading))) {
            throw new BadInput(
                    "/reading", "this job has no reading \"" + reading + "\"", "an id of one of its readings");
        }
        return shop.saveJob(jobId, form, new ReadingWithdrawn(reading, why));
    }
}
