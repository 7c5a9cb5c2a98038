package hornwright.desk.archivefile;

import hornwright.bench.archive.Edtf;
import hornwright.bench.archive.YearRow;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A row of the table of years, in JSON. */
final class YearJson {
    private static final Edtf NONE = Edtf.parse("1925");

    private YearJson() {}

    static List<YearRow> list(Fields file) {
        Set<Long> serials = new HashSet<>();
        return file.list("years", fields -> read(fields, serials));
    }

    private static YearRow read(Fields f, Set<Long> serials) {
        int serial = f.whole("serial", Bound.COUNT, "40300");
        if (!serials.add((long) serial)) {
            f.fault("serial", "serial " + serial + " has a row already", "one row for each serial");
        }
        return new YearRow(serial, year(f), f.text("source", "works day book, leaf 31"));
    }

    private static Edtf year(Fields f) {
        if (!f.has("year")) {
            f.fault("year", "missing", "\"year\": \"1937\"");
            return NONE;
        }
        Edtf year = WitnessJson.date(f, "year");
        if (year == null) {
            return NONE;
        }
        if (year.earliest() == null || year.latest() == null) {
            f.fault("year", "a row needs both ends of its year", "\"year\": \"1937/1939\"");
            return NONE;
        }
        return year;
    }

    static Out write(YearRow row) {
        return Out.object()
                .put("serial", row.serial())
                .put("year", row.year().text())
                .put("source", row.source());
    }
}
