package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.RegulationChapter;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
        Plan plan = withLinks(job);
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

    private static Plan withLinks(PlanInputs job) {
        LinksAnswer links = RegulationChapter.of(RegulationChapter.Question.of(job));
        return Planner.plan(job).withLinks(links.contacts(), links.becauses());
    }

    /** A leaf under F sharp with E pressed: the contact of E on F sharp is too thin, and every number of it says why. */
    @Test
    void what_the_leaf_found_comes_to_a_change_at_a_contact_with_its_reasons() {
        Plan plan = withLinks(Examples.job("job"));
        PlannedLink contact = plan.link("link.e-to-f-sharp").orElseThrow();
        PlannedNumber change = Objects.requireNonNull(contact.change());
        assertThat(change.value()).isBetween(0.02, 0.06);
        assertThat(plan.becauses().leaves(change.because())).anyMatch(Because.FromReading.class::isInstance);
        assertThat(numbers(plan)).contains(change);
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
        Stream<PlannedNumber> ofLinks = plan.links().stream()
                .flatMap(link -> Stream.of(link.error(), link.change(), link.turns(), link.pulls()));
        return Stream.of(ofPlaces, ofCuts, ofMoney, ofLinks).flatMap(all -> all).filter(number -> number != null);
    }
}
