package hornwright.desk.journal;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/** The libraries below speak only when something is wrong: the program's own output belongs to the person. */
final class QuietLibraries {
    /** Held here, because the logging system forgets a level when nobody holds its logger. */
    private static final List<Logger> HUSHED = Stream.of("com.zaxxer.hikari", "org.flywaydb")
            .map(Logger::getLogger)
            .toList();

    private QuietLibraries() {}

    static void hush() {
        HUSHED.forEach(logger -> logger.setLevel(Level.WARNING));
    }
}
