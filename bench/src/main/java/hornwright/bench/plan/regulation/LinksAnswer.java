package hornwright.bench.plan.regulation;

import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.regulation.Correction;
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
public record LinksAnswer(List<ContactLine> contacts, List<SpotLine> spots, Becauses becauses) {
    public LinksAnswer {
        contacts = List.copyOf(contacts);
        spots = List.copyOf(spots);
    }

    /**
     * One contact.
     *
     * @param link id
     * @param error what it is wrong by, too thick above zero; null while no reading bears on it
     * @param change what to add, below zero to take; null where it is left
     * @param pulls of the sanding strip, where it is sanded
     * @param told whether the readings single it out; if not, another contact of the same touch could be altered instead
     */
    public record ContactLine(
            String link,
            @Nullable PlannedNumber error,
            @Nullable PlannedNumber change,
            @Nullable PlannedNumber pulls,
            Correction.Work work,
            boolean told) {}

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

    public Optional<ContactLine> contact(String link) {
        return contacts.stream().filter(line -> line.link().equals(link)).findFirst();
    }

    /** Spots somebody has felt. */
    public long read() {
        return spots.stream().filter(spot -> spot.read() != null).count();
    }

    /** Contacts to be altered. */
    public List<ContactLine> toDo() {
        return contacts.stream().filter(line -> line.change() != null).toList();
    }
}
