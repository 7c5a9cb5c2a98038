package hornwright.desk.journal;

import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.JdbiException;

/**
 * The tables this program makes, as the one who makes them writes them down: version and checksum of each script. Where a
 * database says exactly this, nothing needs to be brought up, and the program starts without loading what would do it.
 */
final class KnownTables {
    private static final Map<String, List<String>> BY_DIALECT = Map.of(
            "sqlite", List.of("1 909877509 done", "2 -1830972762 done", "3 554357528 done"),
            "postgresql", List.of("1 909877509 done", "2 -462022907 done", "3 554357528 done"));

    private KnownTables() {}

    static boolean match(Database database) {
        return written(database).equals(BY_DIALECT.get(database.dialect()));
    }

    /** Empty when there are no tables yet. */
    static List<String> written(Database database) {
        try {
            return database.reader()
                    .withHandle(handle -> handle.createQuery("select version, checksum, success"
                                    + " from flyway_schema_history order by installed_rank")
                            .map((row, context) -> "%s %d %s"
                                    .formatted(
                                            row.getString("version"),
                                            row.getInt("checksum"),
                                            row.getBoolean("success") ? "done" : "failed"))
                            .list());
        } catch (JdbiException none) {
            return List.of();
        }
    }
}
