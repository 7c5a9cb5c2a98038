package hornwright.bench.job;

import hornwright.bench.archive.YearRow;

/** A row of a maker's table of years, new or in the place of the one with its serial. */
@Kind(word = "year-row-put")
public record YearRowPut(String maker, YearRow row) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("year.%s.%d".formatted(maker, row.serial()));
    }

    @Override
    public String inWords() {
        return "table of years: %s, by %s".formatted(row.inWords(), row.source());
    }
}
