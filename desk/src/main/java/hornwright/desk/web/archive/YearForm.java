package hornwright.desk.web.archive;

import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.YearRow;
import hornwright.desk.web.page.Desk;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a row of the table of years as typed. Everything that is wrong is said at once. */
final class YearForm {
    private static final String DIGITS = "\\d{1,9}";
    private static final int LONGEST = 200;

    private final Context context;
    private final WitnessForm form;

    YearForm(Context context) {
        this.context = context;
        form = new WitnessForm(context);
    }

    List<String> faults() {
        return form.faults();
    }

    /** Empty when there are faults. */
    Optional<YearRow> row() {
        String serial = Desk.field(context, "serial");
        if (!serial.matches(DIGITS)) {
            faults().add("A serial is digits like 41630.");
        }
        String source = Desk.field(context, "source");
        if (source.isEmpty() || source.length() > LONGEST) {
            faults().add("Say where the year is written down, like: works day book, leaf 31.");
        }
        @Nullable Edtf year = form.date("year");
        if (year == null ? Desk.field(context, "year").isEmpty() : year.earliest() == null || year.latest() == null) {
            faults().add("A row needs a year with both ends, like 1938, 1938~, 193X or 1937/1939.");
        }
        return faults().isEmpty() && year != null
                ? Optional.of(new YearRow(Long.parseLong(serial), year, source))
                : Optional.empty();
    }
}
