package hornwright.desk.web.view;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as the bench reads them: by the clock on its own wall. */
public final class Clocks {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private Clocks() {}

    public static String time(Instant at) {
        return TIME.withZone(ZoneId.systemDefault()).format(at);
    }

    /** The time of something kept today, else its day. */
    public static String when(Instant at, Instant now) {
        return day(at).equals(day(now))
                ? time(at)
                : SHORT.withZone(ZoneId.systemDefault()).format(at);
    }

    public static String day(Instant at) {
        return DAY.withZone(ZoneId.systemDefault()).format(at);
    }

    public static String day(LocalDate date) {
        return DAY.format(date);
    }
}
