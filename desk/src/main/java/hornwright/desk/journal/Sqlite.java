package hornwright.desk.journal;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The embedded database, one file: one connection that writes, a few that can only read. */
public final class Sqlite implements Database {
    private static final int READERS = 3;

    /** File systems on which SQLite's write-ahead log is not safe, because several machines may share them. */
    private static final Set<String> SHARED = Set.of("nfs", "nfs4", "cifs", "smb3", "smbfs", "fuse.sshfs", "afpfs");

    private final HikariDataSource writing;
    private final HikariDataSource reading;
    private final Jdbi writer;
    private final Jdbi reader;

    private final Path file;

    private Sqlite(Path file, HikariDataSource writing, HikariDataSource reading) {
        this.file = file;
        this.writing = writing;
        this.reading = reading;
        this.writer = Jdbi.create(writing);
        this.reader = Jdbi.create(reading);
    }

    /** Opens the file, making it when it is missing; the schema is {@link Schema}'s business. */
    public static Sqlite open(Path file) {
        requireOwnDisk(file);
        HikariDataSource writing = pool("writer", PinnedSqlite.writing(file), 1);
        try {
            requireVersion(Jdbi.create(writing));
            return new Sqlite(file, writing, pool("reader", PinnedSqlite.reading(file), READERS));
        } catch (RuntimeException e) {
            writing.close();
            throw e;
        }
    }

    @Override
    public Jdbi writer() {
        return writer;
    }

    @Override
    public Jdbi reader() {
        return reader;
    }

    @Override
    public String dialect() {
        return "sqlite";
    }

    @Override
    public DataSource forSchema() {
        return PinnedSqlite.writing(file);
    }

    /** Nothing to do: the connection begins every transaction as BEGIN IMMEDIATE. */
    @Override
    public void claim(Handle transaction) {}

    @Override
    public List<String> faults() {
        return reader.withHandle(handle -> {
            List<String> found = handle.createQuery("pragma integrity_check")
                    .mapTo(String.class)
                    .list();
            return found.equals(List.of("ok")) ? List.of() : found;
        });
    }

    @Override
    public void close() {
        reading.close();
        writing.close();
    }

    private static void requireVersion(Jdbi jdbi) {
        String version = jdbi.withHandle(handle -> handle.createQuery("select sqlite_version()")
                .mapTo(String.class)
                .one());
        if (older(version, PinnedSqlite.OLDEST)) {
            throw new Unusable(
                    "SQLite %s can damage its file; %s or later is needed".formatted(version, PinnedSqlite.OLDEST));
        }
    }

    static boolean older(String version, String than) {
        String[] a = version.split("\\.");
        String[] b = than.split("\\.");
        for (int i = 0; i < Math.min(a.length, b.length); i++) {
            int order = Integer.compare(Integer.parseInt(a[i]), Integer.parseInt(b[i]));
            if (order != 0) {
                return order < 0;
            }
        }
        return a.length < b.length;
    }

    private static void requireOwnDisk(Path file) {
        Path folder = Objects.requireNonNull(file.toAbsolutePath().getParent(), "a database file lies in a folder");
        try {
            String type = Files.getFileStore(folder).type().toLowerCase(Locale.ROOT);
            if (SHARED.contains(type)) {
                throw new Unusable(
                        "%s lies on a network share (%s), where SQLite is not safe; use a disk of this machine,"
                                        .formatted(folder, type)
                                + " or PostgreSQL with --db");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static HikariDataSource pool(String name, DataSource source, int size) {
        HikariConfig config = new HikariConfig();
        config.setPoolName(name);
        config.setDataSource(source);
        config.setMaximumPoolSize(size);
        config.setMinimumIdle(1);
        config.setMaxLifetime(0);
        return new HikariDataSource(config);
    }
}
