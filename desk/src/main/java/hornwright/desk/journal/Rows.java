package hornwright.desk.journal;

import hornwright.bench.job.StreamName;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The statements on the table {@code journal}, each beside its mapper; both databases run the same text. */
final class Rows {
    private static final String COLUMNS =
            "position, stream, seq, at, who, bench, kind, version, edit, prev_hash, hash, idempotency_key";

    private Rows() {}

    /** Where the chain ends. */
    record Last(long position, String hash) {}

    static Last last(Handle handle) {
        return handle.createQuery("select position, hash from journal order by position desc limit 1")
                .map((row, context) -> new Last(row.getLong("position"), row.getString("hash")))
                .findOne()
                .orElse(new Last(0, Chain.START));
    }

    static long lastSeq(Handle handle, StreamName stream) {
        return handle.createQuery("select coalesce(max(seq), 0) from journal where stream = :stream")
                .bind("stream", stream.text())
                .mapTo(Long.class)
                .one();
    }

    static long lastOfJobs(Handle handle) {
        return handle.createQuery("select coalesce(max(position), 0) from journal where stream like 'job.%'")
                .mapTo(Long.class)
                .one();
    }

    static long lastOfShop(Handle handle) {
        return handle.createQuery("select coalesce(max(position), 0) from journal where stream not like 'job.%'")
                .mapTo(Long.class)
                .one();
    }

    static List<Entry> ofStream(Handle handle, StreamName stream, long after) {
        return handle.createQuery(
                        "select " + COLUMNS + " from journal where stream = :stream and seq > :after order by seq")
                .bind("stream", stream.text())
                .bind("after", after)
                .map((row, context) -> entry(row))
                .list();
    }

    static List<Entry> withKeys(Handle handle, List<String> keys) {
        return handle.createQuery(
                        "select " + COLUMNS + " from journal where idempotency_key in (<keys>) order by position")
                .bindList("keys", keys)
                .map((row, context) -> entry(row))
                .list();
    }

    static List<StreamName> streams(Handle handle) {
        return handle.createQuery("select distinct stream from journal order by stream")
                .map((row, context) -> new StreamName(row.getString("stream")))
                .list();
    }

    /** A kind of edit that stands in the journal. */
    record KindFound(String word, int version) {}

    static List<KindFound> kinds(Handle handle) {
        return handle.createQuery("select distinct kind, version from journal order by kind, version")
                .map((row, context) -> new KindFound(row.getString("kind"), row.getInt("version")))
                .list();
    }

    static void all(Handle handle, Consumer<Entry> each) {
        handle.createQuery("select " + COLUMNS + " from journal order by position")
                .setFetchSize(1000)
                .map((row, context) -> entry(row))
                .forEach(each);
    }

    static void insert(Handle handle, List<Entry> entries) {
        PreparedBatch batch = handle.prepareBatch("insert into journal (" + COLUMNS + ") values (:position, :stream,"
                + " :seq, :at, :who, :bench, :kind, :version, :edit, :prevHash, :hash, :key)");
        for (Entry entry : entries) {
            batch.bind("position", entry.position())
                    .bind("stream", entry.stream().text())
                    .bind("seq", entry.seq())
                    .bind("at", entry.at().toString())
                    .bind("who", entry.hand().who())
                    .bind("bench", entry.hand().bench())
                    .bind("kind", entry.kind())
                    .bind("version", entry.version())
                    .bind("edit", entry.edit())
                    .bind("prevHash", entry.prevHash())
                    .bind("hash", entry.hash())
                    .bind("key", entry.key())
                    .add();
        }
        batch.execute();
    }

    private static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                row.getLong("position"),
                new StreamName(row.getString("stream")),
                row.getLong("seq"),
                Instant.parse(row.getString("at")),
                new Hand(row.getString("who"), row.getString("bench")),
                row.getString("kind"),
                row.getInt("version"),
                row.getString("edit"),
                row.getString("prev_hash"),
                row.getString("hash"),
                row.getString("idempotency_key"));
    }
}
