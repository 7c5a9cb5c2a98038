package hornwright.desk.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.Clock;
import org.jspecify.annotations.Nullable;

/** Everything one shop keeps, opened together and closed together. */
public record ShopData(
        Database database,
        Journal journal,
        People people,
        Cards cards,
        Blobs blobs,
        @Nullable DataFolder folder) implements AutoCloseable {

    /** The embedded database and its files; the folder is closed with it. */
    public static ShopData open(DataFolder folder, Clock clock) {
        QuietLibraries.hush();
        try {
            Files.createDirectories(folder.blobs());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return open(Sqlite.open(folder.database()), new BlobFolder(folder.blobs()), folder, clock);
    }

    /** A PostgreSQL server, which also keeps the photos and sounds. */
    public static ShopData open(String jdbcUrl, Clock clock) {
        QuietLibraries.hush();
        return open(Postgres.open(jdbcUrl), new BlobTable(), null, clock);
    }

    private static ShopData open(Database database, BlobContent content, @Nullable DataFolder folder, Clock clock) {
        try {
            Schema.of(database).bringUp();
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
        return new ShopData(
                database,
                new Journal(database, clock),
                new People(database),
                new Cards(database),
                new Blobs(database, content, clock),
                folder);
    }

    @Override
    public void close() {
        database.close();
        if (folder != null) {
            folder.close();
        }
    }
}
