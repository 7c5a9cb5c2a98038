package hornwright.desk.journal;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.util.List;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** A PostgreSQL server, for several benches at once. The same tables and the same statements as the embedded one. */
public final class Postgres implements Database {
    private static final int WRITERS = 4;
    private static final int READERS = 4;

    private final HikariDataSource writing;
    private final HikariDataSource reading;
    private final Jdbi writer;
    private final Jdbi reader;

    private Postgres(HikariDataSource writing, HikariDataSource reading) {
        this.writing = writing;
        this.reading = reading;
        this.writer = Jdbi.create(writing);
        this.reader = Jdbi.create(reading);
    }

    /** Connects to a database that exists, such as {@code jdbc:postgresql://127.0.0.1/bench?user=hornwright}. */
    public static Postgres open(String url) {
        HikariDataSource writing = pool("writer", url, WRITERS, false);
        try {
            return new Postgres(writing, pool("reader", url, READERS, true));
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
        return "postgresql";
    }

    @Override
    public DataSource forSchema() {
        return writing;
    }

    /** Readers go on; a second writer waits here, so positions have no gaps and the chain has no forks. */
    @Override
    public void claim(Handle transaction) {
        transaction.execute("lock table journal in share row exclusive mode");
    }

    @Override
    public List<String> faults() {
        return List.of();
    }

    @Override
    public void close() {
        reading.close();
        writing.close();
    }

    private static HikariDataSource pool(String name, String url, int size, boolean readOnly) {
        HikariConfig config = new HikariConfig();
        config.setPoolName(name);
        config.setJdbcUrl(url);
        config.setMaximumPoolSize(size);
        config.setMinimumIdle(1);
        config.setReadOnly(readOnly);
        if (readOnly) {
            config.setConnectionInitSql("set session characteristics as transaction read only");
        }
        return new HikariDataSource(config);
    }
}
