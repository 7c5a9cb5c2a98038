package hornwright.desk.journal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteDataSource;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The part of SQLite that is not Java. Its jar unpacks it anew at each start and compares it byte by byte, a tenth of a
 * second; the launcher has it unpacked once instead and names the folder in {@code org.sqlite.lib.path}.
 */
public final class SqliteLibrary {
    private SqliteLibrary() {}

    /** Unpacks the library of this machine's kind into the folder. */
    public static void unpackInto(Path folder) throws IOException {
        String name = LibraryLoaderUtil.getNativeLibName();
        String path = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
        Files.createDirectories(folder);
        Path part = folder.resolve(name + ".part");
        try (InputStream packed = SQLiteDataSource.class.getResourceAsStream(path)) {
            Files.copy(
                    Objects.requireNonNull(packed, () -> "SQLite has no library " + path),
                    part,
                    StandardCopyOption.REPLACE_EXISTING);
        }
        Files.move(part, folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
    }

    /** Loads it and asks one thing of an empty database in memory, so that the first real question is quick. */
    public static void rehearse() {
        Jdbi.create("jdbc:sqlite::memory:")
                .withHandle(handle -> handle.createQuery("select :one")
                        .bind("one", 1)
                        .mapTo(Integer.class)
                        .one());
    }
}
