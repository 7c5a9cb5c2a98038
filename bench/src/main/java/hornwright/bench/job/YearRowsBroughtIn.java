package hornwright.bench.job;

import hornwright.bench.archive.YearRow;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Rows of a maker's table of years brought in from a table, all at once, so that one undo takes them out again.
 *
 * @param from the name of the table
 */
@Kind(word = "year-rows-brought-in")
public record YearRowsBroughtIn(String maker, String from, List<YearRow> rows) implements ArchiveEdit {
    public YearRowsBroughtIn {
        rows = List.copyOf(rows);
    }

    @Override
    public Fields fields() {
        Set<String> names = new LinkedHashSet<>();
        rows.forEach(row -> names.add("year.%s.%d".formatted(maker, row.serial())));
        return new Fields(names, false);
    }

    @Override
    public String inWords() {
        return "table of years: %d rows from %s".formatted(rows.size(), from);
    }
}
