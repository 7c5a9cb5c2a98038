package hornwright.desk.use;

import hornwright.bench.job.History;
import hornwright.bench.job.StreamName;
import hornwright.desk.journal.Person;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The edits of a stream in words, newest first. */
public record ShowHistory(Shop shop) {
    /**
     * @param who the name of whose hand it was, or the id when the person was forgotten
     * @param undone whether it is passed over now
     * @param whyNotUndo a sentence when it cannot be undone now
     */
    public record Line(long seq, Instant at, String who, String words, boolean undone, Optional<String> whyNotUndo) {}

    public List<Line> of(StreamName stream) {
        History<?> history = shop.history(stream);
        Map<Long, String> whyNot = history.whyNotUndo();
        Map<String, String> names = new HashMap<>();
        return history.edits().reversed().stream()
                .map(posted -> new Line(
                        posted.seq(),
                        posted.at(),
                        names.computeIfAbsent(posted.who(), this::name),
                        posted.edit().inWords(),
                        history.isUndone(posted.seq()),
                        Optional.ofNullable(whyNot.get(posted.seq()))))
                .toList();
    }

    public List<Line> ofJob(String jobId) {
        shop.opened(jobId);
        return of(StreamName.ofJob(jobId));
    }

    private String name(String who) {
        return shop.data()
                .people()
                .find(who)
                .map(Person::name)
                .filter(name -> !name.isEmpty())
                .orElse(who);
    }
}
