package hornwright.desk.journal;

import hornwright.bench.job.StreamName;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Does to a shop's file what only somebody behind the program's back can do. */
public final class Tamper {
    private Tamper() {}

    public static void execute(Path shop, String statement) {
        try (Connection connection = connect(shop);
                var change = connection.createStatement()) {
            change.execute("drop trigger if exists journal_keeps");
            change.execute("drop trigger if exists journal_grows");
            change.execute(statement);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Adds an edit of any kind, as a newer program would: chained like all the others. */
    public static void append(Path shop, String stream, String kind, int version, String edit) {
        Jdbi.create(() -> connect(shop))
                .useHandle(handle -> append(handle, new StreamName(stream), kind, version, edit));
    }

    private static void append(Handle handle, StreamName stream, String kind, int version, String edit) {
        Rows.Last last = Rows.last(handle);
        Entry entry = new Entry(
                last.position() + 1,
                stream,
                Rows.lastSeq(handle, stream) + 1,
                Place.CLOCK.instant(),
                new Hand("p-1", "bench one"),
                kind,
                version,
                edit,
                "",
                "",
                "0:from the future");
        Rows.insert(handle, List.of(entry.sealedAfter(last.hash())));
    }

    private static Connection connect(Path shop) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + shop.resolve("shop.db"));
    }
}
