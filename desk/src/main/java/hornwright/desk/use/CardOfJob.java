package hornwright.desk.use;

import hornwright.bench.job.History;
import hornwright.bench.job.Job;
import hornwright.desk.journal.Card;
import hornwright.desk.journal.Cards;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the shelf shows of a job. No name of a person goes on it, so that a person can be forgotten. */
final class CardOfJob {
    private CardOfJob() {}

    static Cards.Turned turned(String id, History<Optional<Job>> history, long position) {
        return new Cards.Turned(id, history.state().map(job -> card(job, history.seq(), position)));
    }

    private static Card card(Job job, long seq, long position) {
        Long serial = job.identity().serial();
        return new Card(
                job.id(),
                seq,
                position,
                job.title(),
                job.identity().voice().word(),
                serial == null ? "" : serial.toString(),
                job.arrival().owner() == null ? "" : job.arrival().owner(),
                job.stage().word(),
                job.readings().current().size(),
                job.findings().byPlace().size() + job.findings().byGroup().size(),
                words(job));
    }

    private static String words(Job job) {
        Stream<String> materials = Stream.concat(
                job.findings().places().stream().map(finding -> finding.material() == null ? "" : finding.material()),
                job.findings().groups().stream().map(finding -> finding.mostly()));
        return Stream.of(
                        Stream.of(job.id(), job.title(), job.arrival().complaint()),
                        job.notes().values().stream(),
                        materials.distinct())
                .flatMap(words -> words)
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
    }
}
