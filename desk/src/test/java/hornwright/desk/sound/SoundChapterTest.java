package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.HeightEffects;
import hornwright.bench.sound.HornShape;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundAnswer.ChangeLine;
import hornwright.bench.sound.SoundAnswer.NoteLine;
import hornwright.bench.sound.SoundChapter;
import hornwright.bench.sound.SoundQuestion;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SoundChapterTest {
    private static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);
    private static final double LOW_MM = 4.1;
    private final Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final ShopRules rules = ShopRules.shipped().with("sound.note-within_cents", 4);
    private final double factoryMm = keywork.cups().get("cup.g-sharp").heightFrontMm();
    private final Reading low = read(LOW_MM);

    private static Reading read(double mm) {
        return Reading.of("r.1", ReadingKind.FRONT_HEIGHT, "cup.g-sharp", Observed.Amount.mm(mm, 0.05));
    }

    /** Read at its factory height, it sounds as if it stood low: only another height than the factory's would help. */
    private SoundAnswer answer(Stage stage, double common, Decision... decisions) {
        return answer(read(factoryMm), stage, common, decisions);
    }

    private SoundAnswer answer(Reading read, Stage stage, double common, Decision... decisions) {
        PlanInputs inputs = PlanInputs.of(keywork).withReadings(List.of(read)).withDecisions(List.of(decisions));
        Plan plan = Planner.plan(inputs);
        return SoundChapter.answer(new SoundQuestion(
                keywork, plan, rules, List.of(read), List.of(decisions), List.of(test(stage, common))));
    }

    /** What is heard of a horn whose G♯ stands low, were the factory's heights in tune. */
    private PlayTest test(Stage stage, double common) {
        Map<String, Double> heights = new HashMap<>(Map.of("cup.g-sharp", LOW_MM));
        double[] right = HeightEffects.frequencies(keywork, AIR, HornShape.PATTERN);
        double[] now = HeightEffects.frequencies(keywork, AIR, HornShape.at(heights));
        List<PlayTest.Playing> notes = new ArrayList<>();
        for (int i = 0; i < right.length; i++) {
            double cents = 1200 * Math.log(now[i] / right[i]) / Math.log(2);
            notes.add(new PlayTest.Playing(keywork.fingerings().list().get(i).id(), cents + common, null));
        }
        return new PlayTest(
                "p.1",
                new PlayTest.Conditions("owner's", "", null, null, 440),
                HeardBy.TYPED,
                notes,
                List.of(),
                Map.of(),
                "",
                null,
                stage);
    }

    private static NoteLine note(SoundAnswer answer, String id) {
        return answer.notes().stream()
                .filter(line -> line.fingering().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_flat_note_is_offered_a_higher_cup_and_predicted_nearer_with_a_wider_doubt() {
        SoundAnswer answer = answer(Stage.ARRIVAL, 6);
        assertThat(answer.restored()).isZero();
        assertThat(answer.offered()).singleElement().satisfies(change -> {
            assertThat(change.cup().id()).isEqualTo("cup.g-sharp");
            assertThat(change.from().value()).isEqualTo(factoryMm);
            assertThat(change.to().value()).isBetween(factoryMm + 0.15, rules.value("height.alto.g-sharp.most_mm"));
        });
        NoteLine gSharp = note(answer, "note.g-sharp-4");
        assertThat(gSharp.played().value()).isLessThan(-4);
        assertThat(gSharp.then().value()).isBetween(-4.01, 4.0);
        assertThat(gSharp.then().u()).isGreaterThan(gSharp.played().u());
        assertThat(note(answer, "note.d-4").predicted()).isNull();
        assertThat(java.util.Objects.requireNonNull(answer.common()).value()).isCloseTo(6, within(1.0));
    }

    @Test
    void a_cup_that_came_low_is_put_to_the_factory_height_first_and_nothing_is_offered() {
        SoundAnswer answer = answer(low, Stage.ARRIVAL, 6);
        assertThat(answer.restored()).isEqualTo(1);
        assertThat(answer.offered()).isEmpty();
        assertThat(answer.accepted()).isEmpty();
        NoteLine gSharp = note(answer, "note.g-sharp-4");
        assertThat(gSharp.played().value()).isLessThan(-4);
        assertThat(gSharp.predicted()).isNull();
        assertThat(gSharp.before().value()).isBetween(-1.5, 1.5);
        assertThat(gSharp.before().u()).isGreaterThan(gSharp.played().u());
    }

    @Test
    void an_accepted_height_is_told_as_accepted_and_not_offered_again() {
        double to = answer(Stage.ARRIVAL, 0).offered().getFirst().to().value();
        SoundAnswer answer = answer(Stage.ARRIVAL, 0, new Decision.Height("cup.g-sharp", to, "accepted, for G♯4"));
        assertThat(answer.offered()).isEmpty();
        assertThat(answer.accepted()).extracting(ChangeLine::why).containsExactly("accepted, for G♯4");
        assertThat(note(answer, "note.g-sharp-4").then().value()).isBetween(-4.01, 4.0);
    }

    @Test
    void a_height_already_made_when_the_horn_was_played_is_not_counted_twice() {
        SoundAnswer answer = answer(Stage.RESTED, 0, new Decision.Height("cup.g-sharp", 6, "accepted, for G♯4"));
        assertThat(answer.accepted()).isEmpty();
        assertThat(answer.restored()).isZero();
    }

    @Test
    void every_number_of_the_sound_ends_in_leaves() {
        SoundAnswer answer = answer(Stage.ARRIVAL, 0);
        Becauses all = Planner.plan(PlanInputs.of(keywork).withReadings(List.of(low)))
                .becauses()
                .and(answer.becauses());
        Stream<PlannedNumber> notes = answer.notes().stream()
                .flatMap(line -> Stream.concat(
                        Stream.of(line.played(), line.then()),
                        line.perMm().stream().map(SoundAnswer.PerMm::cents)));
        Stream<PlannedNumber> changes = answer.offered().stream()
                .flatMap(line -> Stream.concat(
                        Stream.of(line.from(), line.to()), line.moved().stream().map(SoundAnswer.Moved::cents)));
        SoundAnswer.Fitted fitted = java.util.Objects.requireNonNull(answer.fitted());
        Stream.of(notes, changes, Stream.of(fitted.volume(), fitted.neck(), fitted.unexplained()))
                .flatMap(numbers -> numbers)
                .forEach(number -> assertThat(all.leaves(number.because()))
                        .as(number.because())
                        .isNotEmpty()
                        .allSatisfy(leaf -> assertThat(leaf).isInstanceOf(Because.Leaf.class)));
    }

    @Test
    void heights_asked_for_some_notes_only_are_offered_for_those_and_explained_by_themselves() {
        Plan plan = Planner.plan(PlanInputs.of(keywork).withReadings(List.of(read(factoryMm))));
        SoundQuestion all = new SoundQuestion(
                keywork, plan, rules, List.of(), List.of(), List.of(test(Stage.ARRIVAL, 0)), java.util.Set.of());
        SoundQuestion other = new SoundQuestion(
                keywork, plan, rules, List.of(), List.of(), all.tests(), java.util.Set.of("note.d-5"));
        SoundQuestion both = new SoundQuestion(
                keywork,
                plan,
                rules,
                List.of(),
                List.of(),
                all.tests(),
                java.util.Set.of("note.g-sharp-4", "note.g-sharp-5"));
        assertThat(SoundChapter.answer(other).offered()).isEmpty();
        SoundAnswer answer = SoundChapter.answer(both);
        assertThat(answer.offered()).extracting(line -> line.cup().id()).containsExactly("cup.g-sharp");
        String because = note(answer, "note.g-sharp-4").then().because();
        assertThat(SoundQuestion.chosenIn(because)).containsExactlyInAnyOrder("note.g-sharp-4", "note.g-sharp-5");
        assertThat(answer.becauses().find(because)).isPresent();
    }

    @Test
    void no_height_is_offered_that_would_ask_for_a_foot_too_thin_to_last() {
        Plan plan = Planner.plan(PlanInputs.of(keywork).withReadings(List.of(read(factoryMm))));
        double foot =
                plan.number("foot.g-sharp", NumberName.THICKNESS).orElseThrow().value();
        SoundQuestion ask = new SoundQuestion(
                keywork,
                plan,
                rules.with("foot.least_mm", foot - 0.05),
                List.of(),
                List.of(),
                List.of(test(Stage.ARRIVAL, 0)));
        double ratio =
                plan.number("foot.g-sharp", NumberName.RATIO).orElseThrow().value();
        assertThat(answer(Stage.ARRIVAL, 0).offered()).isNotEmpty();
        assertThat(SoundChapter.answer(ask).offered())
                .allSatisfy(line ->
                        assertThat(line.to().value() - line.from().value()).isLessThanOrEqualTo(0.05 * ratio + 1e-9));
    }

    @Test
    void a_horn_nobody_has_played_is_offered_nothing() {
        Plan plan = Planner.plan(PlanInputs.of(keywork));
        SoundAnswer answer =
                SoundChapter.answer(new SoundQuestion(keywork, plan, rules, List.of(), List.of(), List.of()));
        assertThat(answer.basis()).isNull();
        assertThat(answer.notes()).isEmpty();
        assertThat(answer.offered()).isEmpty();
        assertThat(plan.number("pad.g-sharp", NumberName.HEIGHT_TARGET)).isPresent();
    }

    @Test
    void five_notes_are_enough_for_advice_but_not_for_a_bore() {
        PlayTest whole = test(Stage.ARRIVAL, 0);
        PlayTest few = new PlayTest(
                "p.1",
                whole.conditions(),
                whole.heardBy(),
                whole.notes().subList(9, 14),
                List.of(),
                Map.of(),
                "",
                null,
                Stage.ARRIVAL);
        Plan plan = Planner.plan(PlanInputs.of(keywork).withReadings(List.of(low)));
        SoundAnswer answer =
                SoundChapter.answer(new SoundQuestion(keywork, plan, rules, List.of(low), List.of(), List.of(few)));
        assertThat(answer.fitted()).isNull();
        assertThat(answer.notes()).hasSize(5);
        Fingering first = answer.notes().getFirst().fingering();
        assertThat(first.id()).isEqualTo(few.notes().getFirst().fingering());
    }
}
