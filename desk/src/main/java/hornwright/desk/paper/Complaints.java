package hornwright.desk.paper;

import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLogger;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;

/** Collects what the renderer warns of. */
final class Complaints implements XRLogger {
    private final List<String> said = new ArrayList<>();

    List<String> list() {
        return List.copyOf(said);
    }

    @Override
    public void log(String where, Level level, String message) {
        note(level, message);
    }

    @Override
    public void log(String where, Level level, String message, @Nullable Throwable cause) {
        note(level, cause == null ? message : message + " (" + cause + ")");
    }

    @Override
    public void setLevel(String logger, Level level) {
        // every level is heard; only warnings and worse are kept
    }

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
        return diagnostic.getLevel().intValue() >= Level.WARNING.intValue();
    }

    private void note(Level level, String message) {
        if (level.intValue() >= Level.WARNING.intValue()) {
            said.add(message);
        }
    }
}
