package hornwright.desk.web.view;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as the bench reads them: by the clock on its own wall. */
public final class Clocks {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private Clocks() {}

    public static String time(Instant at) {
        return TIME.withZone(ZoneId.systemDefault()).format(at);
    }

    public static String day(Instant at) {
        return DAY.withZone(ZoneId.systemDefault()).format(at);
    }
}
