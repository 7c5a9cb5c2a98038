package hornwright.desk.use;

import hornwright.bench.job.Job;

/**
 * What one shop looked at and measured on one horn, for another shop.
 *
 * @param sender short and stable name of the sending shop's data
 * @param name what the sender is called
 */
record SharedSurvey(String format, int version, String sender, String name, Job job) {
    static final String FORMAT = "hornwright survey";
    static final int VERSION = 1;
}
