package hornwright.desk.journal;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** What a database said when it could not be opened, as a sentence. */
final class Refusal {
    private Refusal() {}

    static Unusable of(RuntimeException thrown) {
        SQLException said = deepest(thrown);
        String words = said == null ? String.valueOf(thrown.getMessage()) : String.valueOf(said.getMessage());
        String first = words.lines().findFirst().orElse(words);
        return isUnreachable(said)
                ? Unusable.now("The database does not answer: " + first, thrown)
                : new Unusable("The database cannot be opened: " + first, thrown);
    }

    /** A full disk, a lost connection: what was to be written was not, or nobody can tell. */
    static Unusable notKept(RuntimeException thrown) {
        SQLException said = deepest(thrown);
        String words = String.valueOf((said == null ? thrown : said).getMessage());
        return Unusable.now(
                "Not saved: the database answered \"%s\". Send it again; it is kept once."
                        .formatted(words.lines().findFirst().orElse(words)),
                thrown);
    }

    /** Class 08 of the SQL standard: no connection; 57P03 of PostgreSQL: still starting. */
    private static boolean isUnreachable(@Nullable SQLException said) {
        String state = said == null ? null : said.getSQLState();
        return state != null && (state.startsWith("08") || state.equals("57P03"));
    }

    private static @Nullable SQLException deepest(Throwable thrown) {
        SQLException found = null;
        for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                found = sql;
            }
        }
        return found;
    }
}
