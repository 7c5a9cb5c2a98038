package hornwright.bench.job;

/** A play test that is not to count any more, and why. */
@Kind(word = "play-test-withdrawn")
public record PlayTestWithdrawn(String test, String why) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("play-test." + test);
    }

    @Override
    public String inWords() {
        return "play test %s withdrawn: %s".formatted(test, why);
    }
}
