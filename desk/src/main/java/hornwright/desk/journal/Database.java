package hornwright.desk.journal;

import java.util.List;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** An open database: one way to write, one way to read that cannot write, and the few things the two engines differ in. */
public sealed interface Database extends AutoCloseable permits Sqlite, Postgres {

    /** Connections that may write. Every transaction on them begins by taking the right to write. */
    Jdbi writer();

    /** Connections that cannot write. */
    Jdbi reader();

    /** The folder of migrations that only this engine has. */
    String dialect();

    /** Connections outside the pools, for the one who makes the tables. */
    DataSource forSchema();

    /** Makes this transaction the only one that appends until it ends. */
    void claim(Handle transaction);

    /** What the engine's own check finds wrong with its files; empty when nothing. */
    List<String> faults();

    @Override
    void close();
}
