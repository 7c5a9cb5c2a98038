package hornwright.bench.job;

/** A measurement that is not to count any more, and why. */
@Kind(word = "reading-withdrawn")
public record ReadingWithdrawn(String reading, String why) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("reading." + reading);
    }

    @Override
    public String inWords() {
        return "reading %s withdrawn: %s".formatted(reading, why);
    }
}
