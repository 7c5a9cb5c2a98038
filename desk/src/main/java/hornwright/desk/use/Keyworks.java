package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.Job;
import hornwright.desk.json.BadInput;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The keyworks jobs are planned by, each read once. */
public final class Keyworks {
    private static final Map<String, Optional<Keywork>> READ = new ConcurrentHashMap<>();

    private Keyworks() {}

    /** The keywork of this id, or {@link BadInput} with the ids there are. */
    public static Keywork named(String id) {
        return READ.computeIfAbsent(id, KeyworkFile::shipped)
                .orElseThrow(() -> new BadInput(
                        "/keywork",
                        "there is no keywork \"" + id + "\"",
                        "one of " + String.join(", ", KeyworkFile.SHIPPED)));
    }

    public static Keywork of(Job job) {
        return named(job.identity().keywork());
    }
}
