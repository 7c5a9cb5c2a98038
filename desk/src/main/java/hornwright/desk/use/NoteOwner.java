package hornwright.desk.use;

import hornwright.bench.job.Arrival;
import hornwright.desk.journal.Person;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Writes down who brought a horn and what is wrong with it. The name goes among the people, who can be forgotten; the job
 * carries only an id.
 */
public record NoteOwner(Shop shop) {
    /** @param name empty when the horn is the shop's own */
    public record Owner(String name, String telephone, String email) {}

    /** What was kept of the job; empty when only the person changed or nothing did. */
    public Optional<Saved> note(String jobId, Form form, Owner owner, String complaint) {
        Arrival before = shop.jobNow(jobId).arrival();
        @Nullable String id = owner.name().isEmpty() ? null : idOf(owner, form);
        if (id != null) {
            String address = shop.data().people().find(id).map(Person::address).orElse("");
            shop.data().people().put(new Person(id, owner.name(), address, owner.telephone(), owner.email()));
        }
        Arrival after = new Arrival(id, complaint);
        return after.equals(before) ? Optional.empty() : Optional.of(new AmendArrival(shop).amend(jobId, form, after));
    }

    /** Somebody the shop knows by that name, else somebody new: a horn that changed hands renames nobody. */
    private String idOf(Owner owner, Form form) {
        return shop.data().people().all().stream()
                .filter(person -> person.name().equalsIgnoreCase(owner.name()))
                .map(Person::id)
                .findFirst()
                .orElseGet(() -> FreshId.of("p", form));
    }
}
