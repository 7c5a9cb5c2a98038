package hornwright.bench.sound;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Plan;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import java.util.List;
import java.util.Optional;

/**
 * Everything the tuning of one horn is judged by.
 *
 * @param plan where its heights are known from
 * @param decisions accepted heights are among them
 * @param tests every play test that counts, in order
 */
public record SoundQuestion(
        Keywork keywork,
        Plan plan,
        ShopRules rules,
        List<Reading> readings,
        List<Decision> decisions,
        List<PlayTest> tests) {
    public SoundQuestion {
        readings = List.copyOf(readings);
        decisions = List.copyOf(decisions);
        tests = List.copyOf(tests);
    }

    /** The last session with notes in it: what everything starts from. */
    public Optional<PlayTest> basis() {
        return tests.stream().filter(test -> !test.notes().isEmpty()).reduce((first, second) -> second);
    }

    /** Whether the basis was played with the heights already set, so that accepted changes are in it. */
    boolean heightsAreSet() {
        return basis().filter(test -> test.stage().compareTo(Stage.HEIGHTS_SET) >= 0)
                .isPresent();
    }
}
