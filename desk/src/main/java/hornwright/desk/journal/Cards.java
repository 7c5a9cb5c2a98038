package hornwright.desk.journal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The shelf's cards, written in the transaction of the edits they follow from, and rebuilt when they are in doubt. */
public final class Cards {
    private static final String COLUMNS =
            "job, seq, position, title, voice, serial, owner, stage, readings, findings, words";
    private static final RowMapper<Card> CARD = (row, context) -> new Card(
            row.getString("job"),
            row.getLong("seq"),
            row.getLong("position"),
            row.getString("title"),
            row.getString("voice"),
            row.getString("serial"),
            row.getString("owner"),
            row.getString("stage"),
            row.getInt("readings"),
            row.getInt("findings"),
            row.getString("words"));

    private final Database database;

    public Cards(Database database) {
        this.database = database;
    }

    /** A card to put, or none for a job that is no more. */
    public record Turned(String job, Optional<Card> card) {}

    /** Writes what {@code turn} makes of the fresh entries, in their transaction. */
    public static Journal.Alongside alongside(Function<List<Entry>, List<Turned>> turn) {
        return (transaction, fresh) -> turn.apply(fresh).forEach(turned -> write(transaction, turned));
    }

    /** Latest touched first. */
    public List<Card> all() {
        return database.reader()
                .withHandle(handle -> handle.createQuery("select " + COLUMNS + " from card order by position desc, job")
                        .map(CARD)
                        .list());
    }

    /** Puts these cards in the place of all there are. */
    public void rebuild(List<Card> cards) {
        database.writer().useTransaction(transaction -> {
            database.claim(transaction);
            transaction.execute("delete from card");
            cards.forEach(card -> put(transaction, card));
        });
    }

    private static void write(Handle transaction, Turned turned) {
        transaction
                .createUpdate("delete from card where job = :job")
                .bind("job", turned.job())
                .execute();
        turned.card().ifPresent(card -> put(transaction, card));
    }

    private static void put(Handle transaction, Card card) {
        transaction
                .createUpdate("insert into card (" + COLUMNS + ") values (:job, :seq, :position, :title, :voice,"
                        + " :serial, :owner, :stage, :readings, :findings, :words)")
                .bindMethods(card)
                .execute();
    }
}
