package hornwright.bench.job;

import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Stage;

/** The horn was played and listened to. A test of the same id takes the place of the former one. */
@Kind(word = "play-test-taken")
public record PlayTestTaken(PlayTest test) implements JobEdit {
    /** The test with the hand and the time it was written down by, where it does not say itself. */
    PlayTest stamped(Posted posted) {
        return new PlayTest(
                test.id(),
                test.conditions(),
                test.heardBy(),
                test.notes(),
                test.leftOut(),
                test.answers(),
                test.who().isEmpty() ? posted.who() : test.who(),
                test.when() == null ? posted.at() : test.when(),
                test.stage());
    }

    @Override
    public Fields fields() {
        return Fields.of("play-test." + test.id());
    }

    @Override
    public String inWords() {
        long notes = test.notes().size();
        String stage = test.stage() == Stage.ARRIVAL
                ? "at arrival"
                : "with " + test.stage().word();
        String answers = test.answers().isEmpty() ? "" : ", " + test.answers().size() + " answers";
        return "play test %s: %d notes%s, %s"
                .formatted(stage, notes, answers, test.heardBy().word());
    }
}
