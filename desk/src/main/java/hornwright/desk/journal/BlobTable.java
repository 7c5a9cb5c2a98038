package hornwright.desk.journal;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Bytes in a table of PostgreSQL, where several machines reach them and its own backup takes them along. */
public record BlobTable() implements BlobContent {
    @Override
    public void prepare(String sha256, byte[] bytes) {}

    @Override
    public void within(Handle transaction, String sha256, byte[] bytes) {
        transaction
                .createUpdate("insert into blob_content (sha256, content) values (:sha256, :content)"
                        + " on conflict (sha256) do nothing")
                .bind("sha256", sha256)
                .bind("content", bytes)
                .execute();
    }

    @Override
    public Optional<byte[]> read(Database database, String sha256) {
        return database.reader()
                .withHandle(handle -> handle.createQuery("select content from blob_content where sha256 = :sha256")
                        .bind("sha256", sha256)
                        .map((row, context) -> row.getBytes("content"))
                        .findOne());
    }
}
