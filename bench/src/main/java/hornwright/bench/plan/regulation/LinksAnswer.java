package hornwright.bench.plan.regulation;

import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.regulation.Watch;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The linked cups as the feelers found them, and one round of work that puts them right.
 *
 * @param contacts in the order in which the bench sets them
 * @param spots every spot a leaf can go in, in the order of the keywork
 */
public record LinksAnswer(List<PlannedLink> contacts, List<SpotLine> spots, Becauses becauses) {
    public LinksAnswer {
        contacts = List.copyOf(contacts);
        spots = List.copyOf(spots);
    }

    /**
     * One spot.
     *
     * @param read what the leaf said; null while nobody has felt
     * @param expected gap once the work is done, below zero pressed in; null in a contact and while its key was not felt
     * @param closes whether no gap counts as closed now; null while nobody has felt
     */
    public record SpotLine(
            Watch watch,
            @Nullable PlannedNumber read,
            @Nullable PlannedNumber expected,
            @Nullable Boolean closes) {}

    public Optional<PlannedLink> contact(String link) {
        return contacts.stream().filter(line -> line.link().equals(link)).findFirst();
    }

    /** Spots somebody has felt. */
    public long read() {
        return spots.stream().filter(spot -> spot.read() != null).count();
    }

    /** Contacts to be altered. */
    public List<PlannedLink> toDo() {
        return contacts.stream().filter(line -> line.change() != null).toList();
    }
}
