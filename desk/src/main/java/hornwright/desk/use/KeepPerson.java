package hornwright.desk.use;

import hornwright.desk.journal.Person;
import java.util.List;
import java.util.Optional;

/** Keeps names, addresses and telephones apart from the edits, so that a person can be forgotten. */
public record KeepPerson(Shop shop) {
    public void put(Person person) {
        shop.data().people().put(person);
    }

    public Optional<Person> find(String id) {
        return shop.data().people().find(id);
    }

    public List<Person> all() {
        return shop.data().people().all();
    }

    /** Everything but the id is gone afterwards; the edits stay as they are. */
    public void forget(String id) {
        shop.data().people().forget(id);
    }
}
