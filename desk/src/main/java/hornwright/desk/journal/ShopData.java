package hornwright.desk.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Everything one shop keeps, opened together and closed together. */
public record ShopData(
        Database database,
        Journal journal,
        People people,
        Cards cards,
        Shown shown,
        Blobs blobs,
        @Nullable DataFolder folder)
        implements AutoCloseable {

    /** The embedded database and its files; the folder is closed with it. */
    public static ShopData open(DataFolder folder, Clock clock) {
        QuietLibraries.hush();
        try {
            Files.createDirectories(folder.blobs());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return open(() -> Sqlite.open(folder.database()), new BlobFolder(folder.blobs()), folder, clock);
    }

    /** The data of a folder another program may be using: only to be read, its tables left as they are. */
    public static ShopData lookInto(Path folder, Clock clock) {
        QuietLibraries.hush();
        Path file = folder.resolve(DataFolder.DATABASE);
        Database database = opened(() -> Sqlite.open(file), Schema::refuseOther);
        return over(database, new BlobFolder(folder.resolve(DataFolder.BLOBS)), null, clock);
    }

    /** A PostgreSQL server, which also keeps the photos and sounds. */
    public static ShopData open(String jdbcUrl, Clock clock) {
        QuietLibraries.hush();
        return open(() -> Postgres.open(jdbcUrl), new BlobTable(), null, clock);
    }

    private static ShopData open(
            Supplier<Database> opening, BlobContent content, @Nullable DataFolder folder, Clock clock) {
        try {
            return over(opened(opening, Schema::bringUp), content, folder, clock);
        } catch (RuntimeException e) {
            if (folder != null) {
                folder.close();
            }
            throw e;
        }
    }

    /** What the libraries throw becomes a sentence here, so that nobody above has to know them. */
    private static Database opened(Supplier<Database> opening, Consumer<Schema> ready) {
        Database database;
        try {
            database = opening.get();
        } catch (Unusable e) {
            throw e;
        } catch (RuntimeException e) {
            throw Refusal.of(e);
        }
        try {
            if (!KnownTables.match(database)) {
                ready.accept(Schema.of(database));
            }
            return database;
        } catch (RuntimeException e) {
            database.close();
            throw e instanceof Unusable ? e : Refusal.of(e);
        }
    }

    private static ShopData over(Database database, BlobContent content, @Nullable DataFolder folder, Clock clock) {
        return new ShopData(
                database,
                new Journal(database, clock),
                new People(database),
                new Cards(database),
                new Shown(database),
                new Blobs(database, content, clock),
                folder);
    }

    /** See {@link Journal#unknownKinds}; a journal that cannot even be listed is refused with a sentence. */
    public List<String> unknownKinds() {
        try {
            return journal.unknownKinds();
        } catch (RuntimeException e) {
            throw Refusal.of(e);
        }
    }

    @Override
    public void close() {
        database.close();
        if (folder != null) {
            folder.close();
        }
    }
}
