package hornwright.desk.use;

import hornwright.bench.job.Arrival;
import hornwright.bench.job.Decided;
import hornwright.bench.job.Edit;
import hornwright.bench.job.Identity;
import hornwright.bench.job.Job;
import hornwright.bench.job.JobImported;
import hornwright.bench.job.JobOpened;
import hornwright.bench.job.StreamName;
import hornwright.bench.survey.Decision;
import hornwright.desk.journal.Entry;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Takes a horn in: gives it the next number and writes down what came through the door. */
public record OpenJob(Shop shop) {
    /** @param use null while nothing is agreed */
    public Saved open(Form form, Identity identity, Arrival arrival, Decision.@Nullable Use use) {
        Keyworks.of(identity);
        Edit opened = new JobOpened(identity, arrival);
        return fresh(form, use == null ? new Edit[] {opened} : new Edit[] {opened, new Decided(use)});
    }

    /** Files a job from elsewhere under a number of this shop. */
    public Saved bringIn(Form form, Job job) {
        Keyworks.of(job);
        return fresh(form, new JobImported(job));
    }

    private Saved fresh(Form form, Edit... edits) {
        Optional<Entry> before = shop.data().journal().withKey(form.key());
        if (before.isPresent()) {
            return at(before.get().stream(), form, edits);
        }
        int number = 1 + highest();
        while (true) {
            Saved saved = at(StreamName.ofJob("q-%04d".formatted(number)), form, edits);
            if (!(saved instanceof Saved.Conflict)) {
                return saved;
            }
            number++; // somebody opened a job at the same moment
        }
    }

    private Saved at(StreamName stream, Form form, Edit... edits) {
        return shop.save(stream, new Form(0, form.hand(), form.key()), edits);
    }

    private int highest() {
        List<StreamName> streams = shop.data().journal().streams();
        return streams.stream()
                .filter(StreamName::isJob)
                .map(StreamName::jobId)
                .filter(id -> id.matches("q-\\d{1,8}"))
                .mapToInt(id -> Integer.parseInt(id.substring(2)))
                .max()
                .orElse(0);
    }
}
