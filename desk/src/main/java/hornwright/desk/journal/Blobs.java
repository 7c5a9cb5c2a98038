package hornwright.desk.journal;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/**
 * Photos and sounds behind one door, whichever way their bytes are kept. The row that says a blob exists is committed
 * only after its bytes are safe, so no row ever points at a missing file; bytes without a row are harmless leftovers.
 */
public final class Blobs {
    private static final RowMapper<Blob> BLOB = (row, context) -> new Blob(
            row.getString("sha256"),
            row.getLong("size"),
            row.getString("media"),
            java.time.Instant.parse(row.getString("at")));

    private final Database database;
    private final BlobContent content;
    private final Clock clock;

    public Blobs(Database database, BlobContent content, Clock clock) {
        this.database = database;
        this.content = content;
        this.clock = clock;
    }

    /** Keeps the bytes; the same bytes a second time are kept once. */
    public Blob put(byte[] bytes, String media) {
        Blob blob = new Blob(Blob.nameOf(bytes), bytes.length, media, clock.instant());
        content.prepare(blob.sha256(), bytes);
        database.writer().useTransaction(handle -> {
            insert(handle, blob, bytes);
        });
        return find(blob.sha256()).orElseThrow();
    }

    public Optional<Blob> find(String sha256) {
        return database.reader()
                .withHandle(
                        handle -> handle.createQuery("select sha256, size, media, at from blob where sha256 = :sha256")
                                .bind("sha256", sha256)
                                .map(BLOB)
                                .findOne());
    }

    /** The bytes, or empty when there is no such blob. */
    public Optional<byte[]> read(String sha256) {
        return find(sha256).flatMap(blob -> content.read(database, blob.sha256()));
    }

    public List<Blob> all() {
        return database.reader().withHandle(Blobs::all);
    }

    static List<Blob> all(Handle handle) {
        return handle.createQuery("select sha256, size, media, at from blob order by sha256")
                .map(BLOB)
                .list();
    }

    /** The first half of keeping bytes somebody else has already named and dated. */
    void prepare(String sha256, byte[] bytes) {
        content.prepare(sha256, bytes);
    }

    void insert(Handle transaction, Blob blob, byte[] bytes) {
        insert(transaction, blob);
        content.within(transaction, blob.sha256(), bytes);
    }

    /** Reads every blob back and names those that are missing or not the bytes they are named by. */
    public List<String> check() {
        List<String> faults = new ArrayList<>();
        for (Blob blob : all()) {
            Optional<byte[]> bytes = content.read(database, blob.sha256());
            if (bytes.isEmpty()) {
                faults.add("The file %s is missing.".formatted(blob.sha256()));
            } else if (!Blob.nameOf(bytes.get()).equals(blob.sha256())) {
                faults.add("The file %s is not as it was written.".formatted(blob.sha256()));
            }
        }
        return faults;
    }

    private static void insert(Handle handle, Blob blob) {
        handle.createUpdate("insert into blob (sha256, size, media, at) values (:sha256, :size, :media, :at)"
                        + " on conflict (sha256) do nothing")
                .bind("sha256", blob.sha256())
                .bind("size", blob.size())
                .bind("media", blob.media())
                .bind("at", blob.at().toString())
                .execute();
    }
}
