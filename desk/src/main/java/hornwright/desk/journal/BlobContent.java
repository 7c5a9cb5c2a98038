package hornwright.desk.journal;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Where the bytes of blobs lie. */
public sealed interface BlobContent permits BlobFolder, BlobTable {

    /** Makes the bytes safe before the row is written. */
    void prepare(String sha256, byte[] bytes);

    /** Writes the bytes in the row's own transaction. */
    void within(Handle transaction, String sha256, byte[] bytes);

    Optional<byte[]> read(Database database, String sha256);
}
