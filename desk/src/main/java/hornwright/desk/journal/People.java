package hornwright.desk.journal;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The only place with names and addresses; not part of the journal, so that a person can be forgotten. */
public final class People {
    private static final RowMapper<Person> PERSON = (row, context) -> new Person(
            row.getString("id"),
            row.getString("name"),
            row.getString("address"),
            row.getString("telephone"),
            row.getString("email"));

    private final Database database;

    public People(Database database) {
        this.database = database;
    }

    /** Adds the person, or replaces what is known of them. */
    public void put(Person person) {
        database.writer().useTransaction(handle -> put(handle, person));
    }

    static void put(Handle handle, Person person) {
        handle.createUpdate("insert into person (id, name, address, telephone, email)"
                        + " values (:id, :name, :address, :telephone, :email) on conflict (id) do update set"
                        + " name = excluded.name, address = excluded.address, telephone = excluded.telephone,"
                        + " email = excluded.email")
                .bindMethods(person)
                .execute();
    }

    public Optional<Person> find(String id) {
        return database.reader()
                .withHandle(handle -> handle.createQuery(
                                "select id, name, address, telephone, email from person where id = :id")
                        .bind("id", id)
                        .map(PERSON)
                        .findOne());
    }

    public List<Person> all() {
        return database.reader().withHandle(People::all);
    }

    static List<Person> all(Handle handle) {
        return handle.createQuery("select id, name, address, telephone, email from person order by id")
                .map(PERSON)
                .list();
    }

    /** Blanks everything but the id; edits that carry it go on meaning the same, nameless, hand. */
    public void forget(String id) {
        put(Person.forgotten(id));
    }
}
