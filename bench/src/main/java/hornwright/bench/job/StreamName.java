package hornwright.bench.job;

import java.util.regex.Pattern;

/**
 * Names one line of edits that are counted together: a job ({@code job.q-0007}), or one of the shop's own three, the
 * archive, the stock and the rules.
 */
public record StreamName(String text) {
    private static final String JOB = "job.";
    private static final Pattern SHAPE = Pattern.compile("archive|stock|rules|job\\.[a-z0-9][a-z0-9-]{0,62}");

    public static final StreamName ARCHIVE = new StreamName("archive");
    public static final StreamName STOCK = new StreamName("stock");
    public static final StreamName RULES = new StreamName("rules");

    public StreamName {
        if (!SHAPE.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    "no stream is called '%s'; a job's is like 'job.q-0007'".formatted(text));
        }
    }

    public static StreamName ofJob(String jobId) {
        return new StreamName(JOB + jobId);
    }

    public boolean isJob() {
        return text.startsWith(JOB);
    }

    /** The job's own id, {@code q-0007} of {@code job.q-0007}. */
    public String jobId() {
        if (!isJob()) {
            throw new IllegalStateException("'%s' is not a job".formatted(text));
        }
        return text.substring(JOB.length());
    }

    @Override
    public String toString() {
        return text;
    }
}
