package hornwright.bench.archive;

import hornwright.engines.numerics.MonotoneCubic;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * From serial to year by the shop's own table: a smooth curve through the middles of its rows that never turns back.
 * All voices of a maker share one run of numbers. The bracket of an answer is what the rows on both sides allow.
 *
 * <p>Source: {@link MonotoneCubic}; that numbers ran with the years is common practice, and the table says it of itself.
 */
public record YearTable(List<YearRow> rows) {
    public YearTable {
        rows = rows.stream().sorted(Comparator.comparingLong(YearRow::serial)).toList();
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).serial() == rows.get(i - 1).serial()) {
                throw new IllegalArgumentException(
                        "serial " + rows.get(i).serial() + " has two rows in the table of years");
            }
        }
    }

    /** With one more row; empty when its serial has one already or the years would run backwards. */
    public Optional<YearTable> and(YearRow row) {
        if (rows.stream().anyMatch(one -> one.serial() == row.serial())) {
            return Optional.empty();
        }
        YearTable more =
                new YearTable(Stream.concat(rows.stream(), Stream.of(row)).toList());
        return more.backwards().isPresent() && backwards().isEmpty() ? Optional.empty() : Optional.of(more);
    }

    public YearAnswer at(long serial) {
        if (rows.isEmpty()) {
            return new YearAnswer.Untold();
        }
        Optional<YearAnswer.Backwards> backwards = backwards();
        if (backwards.isPresent()) {
            return backwards.get();
        }
        if (serial < rows.getFirst().serial() || serial > rows.getLast().serial()) {
            boolean before = serial < rows.getFirst().serial();
            return new YearAnswer.Outside(serial, before, before ? rows.getFirst() : rows.getLast());
        }
        int above = 0;
        while (rows.get(above).serial() < serial) {
            above++;
        }
        YearRow to = rows.get(above);
        YearRow from = to.serial() == serial ? to : rows.get(above - 1);
        return new YearAnswer.Found(serial, year(middle(serial)), from, to);
    }

    /** The first two rows next to one another that contradict each other. */
    public Optional<YearAnswer.Backwards> backwards() {
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).middle() < rows.get(i - 1).middle()) {
                return Optional.of(new YearAnswer.Backwards(rows.get(i - 1), rows.get(i)));
            }
        }
        return Optional.empty();
    }

    /** The curve at a serial within the table, in days since 1970. */
    public double middle(long serial) {
        if (rows.size() == 1) {
            return rows.getFirst().middle();
        }
        return new MonotoneCubic(
                        rows.stream().mapToDouble(YearRow::serial).toArray(),
                        rows.stream().mapToDouble(YearRow::middle).toArray())
                .at((double) serial);
    }

    private static int year(double day) {
        return LocalDate.ofEpochDay((long) Math.floor(day)).getYear();
    }
}
