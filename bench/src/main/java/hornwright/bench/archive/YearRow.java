package hornwright.bench.archive;

import java.time.LocalDate;
import java.util.Objects;

/**
 * One row of the shop's own table: a horn of this number was made in this year, and where that is written down.
 *
 * @param year bounded on both sides: "1938", "1938~", "193X", "1937/1939", "1938-05"
 */
public record YearRow(long serial, Edtf year, String source) {
    public YearRow {
        if (serial < 0) {
            throw new IllegalArgumentException("a serial is not below 0");
        }
        if (year.earliest() == null || year.latest() == null) {
            throw new IllegalArgumentException(
                    "a row of the table needs both ends of its year, like 1938 or 1937/1939");
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("a row of the table says where it is written down");
        }
    }

    public int earliest() {
        return first().getYear();
    }

    public int latest() {
        return last().getYear();
    }

    /** Middle of the days it can mean, in days since 1970. */
    public double middle() {
        return (first().toEpochDay() + last().toEpochDay() + 1) / 2.0;
    }

    /** "40300 is of 1937". */
    public String inWords() {
        return "%d is of %s".formatted(serial, year.inWords());
    }

    private LocalDate first() {
        return Objects.requireNonNull(year.earliest());
    }

    private LocalDate last() {
        return Objects.requireNonNull(year.latest());
    }
}
