package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number is followed down to leaves, on every shipped horn, measured or not. */
final class EveryNumberSpeaksTest {
    static Stream<PlanInputs> jobs() {
        Stream<PlanInputs> bare = KeyworkFile.SHIPPED.stream()
                .map(id -> PlanInputs.of(KeyworkFile.shipped(id).orElseThrow()));
        return Stream.concat(bare, Stream.of(Examples.job("job"), Examples.job("job-ten-minutes")));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void every_number_walks_down_to_leaves_and_never_ends_in_nothing(PlanInputs job) {
        Plan plan = Planner.plan(job);
        assertThat(numbers(plan)).isNotEmpty().allSatisfy(number -> {
            assertThat(plan.becauses().leaves(number.because()))
                    .as(number.toString())
                    .isNotEmpty();
            assertThat(plan.becauses().source(number.because())).isNotBlank();
        });
        assertThat(plan.becauses().byId().values()).allSatisfy(because -> {
            assertThat(because.rule()).isNotBlank();
            for (Because.Input input : because.inputs()) {
                assertThat(plan.becauses().find(input.because()))
                        .as(input.because())
                        .isPresent();
            }
        });
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void every_height_says_where_it_is_taken(PlanInputs job) {
        Plan plan = Planner.plan(job);
        assertThat(plan.places())
                .allSatisfy(place -> place.numbers().forEach((name, number) -> {
                    if (name.word().startsWith("height")) {
                        assertThat(number.at()).as(place.id() + " " + name).isNotNull();
                    }
                }));
    }

    static Stream<PlannedNumber> numbers(Plan plan) {
        Stream<PlannedNumber> ofPlaces = plan.places().stream()
                .flatMap(place -> Stream.concat(
                        place.numbers().values().stream(),
                        place.choices().stream().map(choice -> choice.left())));
        Stream<PlannedNumber> ofCuts =
                plan.cuts().stream().flatMap(cut -> Stream.of(cut.cutMm(), cut.sheetMm(), cut.finishMm()));
        Stream<PlannedNumber> ofMoney = Stream.concat(
                plan.money().lines().stream().map(line -> line.hours()),
                Stream.of(
                        plan.money().hours(), plan.money().parts(), plan.money().cost()));
        return Stream.of(ofPlaces, ofCuts, ofMoney).flatMap(all -> all).filter(number -> number != null);
    }
}
