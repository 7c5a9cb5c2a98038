package hornwright.desk.use;

import hornwright.bench.job.StreamName;
import hornwright.desk.journal.Card;
import hornwright.desk.journal.Entry;
import java.util.List;
import java.util.Optional;

/** Makes the shelf's cards anew from the journal. */
public record RebuildCards(Shop shop) {
    public void all() {
        shop.data().cards().rebuild(made());
    }

    /** The cards as they should be. */
    List<Card> made() {
        return shop.data().journal().streams().stream()
                .filter(StreamName::isJob)
                .flatMap(stream -> card(stream).stream())
                .toList();
    }

    /** Rebuilds when the journal has gone on without the cards, as after a restore or an older program. */
    void whenBehind() {
        long journal = shop.data().journal().head();
        List<Card> cards = shop.data().cards().all();
        long newest = cards.isEmpty() ? 0 : cards.getFirst().position();
        if (journal > 0 && newest < shop.data().journal().lastOfJobs()) {
            all();
        }
    }

    private Optional<Card> card(StreamName stream) {
        var history = shop.job(stream.jobId());
        List<Entry> last = shop.data().journal().read(stream, history.seq() - 1);
        return last.isEmpty()
                ? Optional.empty()
                : CardOfJob.turned(stream.jobId(), history, last.getLast().position())
                        .card();
    }
}
