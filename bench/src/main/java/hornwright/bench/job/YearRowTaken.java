package hornwright.bench.job;

/** A row taken out of a maker's table of years. */
@Kind(word = "year-row-taken")
public record YearRowTaken(String maker, long serial) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("year.%s.%d".formatted(maker, serial));
    }

    @Override
    public String inWords() {
        return "table of years: the row of %d taken out".formatted(serial);
    }
}
