package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.History;
import hornwright.bench.job.Job;
import hornwright.desk.journal.Person;
import java.util.Optional;

/** A job as it is now, with what a page or a sheet needs beside it. */
public record ShowJob(Shop shop) {
    /**
     * @param seq what a form on the page must expect
     * @param owner empty when the horn is the shop's own or the owner was forgotten
     */
    public record View(Job job, long seq, Keywork keywork, Optional<Person> owner) {}

    public View show(String id) {
        History<Optional<Job>> history = shop.opened(id);
        Job job = history.state().orElseThrow();
        Optional<Person> owner =
                Optional.ofNullable(job.arrival().owner()).flatMap(shop.data().people()::find);
        return new View(job, history.seq(), Keyworks.of(job), owner);
    }
}
