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
import java.util.Set;

/**
 * Everything the tuning of one horn is judged by.
 *
 * @param plan where its heights are known from
 * @param decisions accepted heights are among them
 * @param tests every play test that counts, in order
 * @param chosen fingerings that heights shall bring nearer; empty for every note outside the shop's band
 */
public record SoundQuestion(
        Keywork keywork,
        Plan plan,
        ShopRules rules,
        List<Reading> readings,
        List<Decision> decisions,
        List<PlayTest> tests,
        Set<String> chosen) {
    private static final String FOR = "/for/";

    public SoundQuestion {
        readings = List.copyOf(readings);
        decisions = List.copyOf(decisions);
        tests = List.copyOf(tests);
        chosen = Set.copyOf(chosen);
    }

    /** For every note outside the band. */
    public SoundQuestion(
            Keywork keywork,
            Plan plan,
            ShopRules rules,
            List<Reading> readings,
            List<Decision> decisions,
            List<PlayTest> tests) {
        this(keywork, plan, rules, readings, decisions, tests, Set.of());
    }

    /** The id of a because that rests on what is offered, so that another choice of notes has another. */
    String offered(String id) {
        return chosen.isEmpty()
                ? id
                : id + FOR + chosen.stream().sorted().collect(java.util.stream.Collectors.joining(","));
    }

    /** The notes that were chosen when this id of a because was given. */
    public static Set<String> chosenIn(String id) {
        int at = id.indexOf(FOR);
        return at < 0 ? Set.of() : Set.of(id.substring(at + FOR.length()).split(","));
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
