package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.Comparison;
import hornwright.bench.sound.Comparison.NoteChange;
import hornwright.bench.sound.ComparisonChapter;
import hornwright.bench.sound.LeakAnswer;
import hornwright.bench.sound.LeakSuspects;
import hornwright.bench.sound.SoundQuestion;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Symptom;
import hornwright.bench.survey.Unit;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.AirModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class ComparisonTest {
    private final Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final Random dice = new Random(9);

    /** Every note twice, two cents of spread. */
    private PlayTest session(Stage stage, ToDoubleFunction<Fingering> cents) {
        List<PlayTest.Playing> notes = new ArrayList<>();
        for (Fingering note : keywork.fingerings()) {
            for (int time = 0; time < 2; time++) {
                double played = cents.applyAsDouble(note) + 2 * dice.nextGaussian();
                notes.add(new PlayTest.Playing(note.id(), played, null));
            }
        }
        return new PlayTest(
                "p." + stage.word(),
                new PlayTest.Conditions("", "", null, null, 440),
                HeardBy.TYPED,
                notes,
                List.of(),
                Map.of(),
                "",
                null,
                stage);
    }

    private Comparison compare(List<PlayTest> tests, List<Reading> readings) {
        Plan plan = Planner.plan(PlanInputs.of(keywork));
        return ComparisonChapter.compare(
                new SoundQuestion(keywork, plan, ShopRules.shipped(), List.of(), List.of(), tests), readings);
    }

    @Test
    void one_note_that_moved_has_changed_and_what_all_share_has_not() {
        Comparison found = compare(
                List.of(
                        session(Stage.ARRIVAL, note -> 5),
                        session(Stage.RESTED, note -> note.id().equals("note.d-5") ? -6 : 14)),
                List.of());
        assertThat(Objects.requireNonNull(found.common()).value()).isCloseTo(9, within(2.0));
        assertThat(found.notes()).hasSize(40);
        assertThat(found.notes().stream()
                        .filter(NoteChange::changed)
                        .map(note -> note.fingering().id()))
                .contains("note.d-5")
                .hasSizeLessThanOrEqualTo(6);
        NoteChange moved = found.notes().stream()
                .filter(note -> note.fingering().id().equals("note.d-5"))
                .findFirst()
                .orElseThrow();
        assertThat(moved.difference().value())
                .isCloseTo(-20, within(3 * moved.difference().u()));
        assertThat(moved.after().value() - moved.before().value())
                .isCloseTo(moved.difference().value(), within(1e-9));
    }

    @Test
    void one_session_compares_with_nothing() {
        Comparison found = compare(List.of(session(Stage.ARRIVAL, note -> 5)), List.of());
        assertThat(found.later()).isNull();
        assertThat(found.notes()).isEmpty();
    }

    @Test
    void a_leak_read_twice_is_equal_unless_it_differs_by_more_than_its_doubt() {
        assertThat(Objects.requireNonNull(compare(List.of(), leaks(12, 11.9)).leak())
                        .changed())
                .isFalse();
        assertThat(Objects.requireNonNull(compare(List.of(), leaks(12, 3)).leak())
                        .changed())
                .isTrue();
        assertThat(compare(List.of(), leaks(12, 3).subList(0, 1)).leak()).isNull();
    }

    private static List<Reading> leaks(double before, double now) {
        return List.of(leak("r.1", before, Stage.ARRIVAL), leak("r.2", now, Stage.RESTED));
    }

    private static Reading leak(String id, double value, Stage stage) {
        Observed observed = new Observed.Amount(value, Unit.MILLILITRES_PER_SECOND, 0.3);
        return new Reading(id, ReadingKind.LEAK, "horn", "", observed, "leak gauge", "", "", null, stage, null);
    }

    @Test
    void low_notes_that_fail_point_to_pads_above_them_and_a_horn_that_speaks_points_nowhere() {
        LeakSuspects suspects = LeakSuspects.of(keywork, AirModel.CHAIGNE_KERGOMARD.at(26.85));
        Map<String, Symptom> answers = new LinkedHashMap<>();
        Map<String, Double> lost = suspects.lostDb("cup.g", 0.65);
        lost.forEach((note, db) -> answers.put(note, Symptom.of(db)));
        PlayTest silent = session(Stage.ARRIVAL, note -> 0);
        PlayTest said = new PlayTest(
                "p.1", silent.conditions(), HeardBy.TYPED, List.of(), List.of(), answers, "", null, Stage.ARRIVAL);
        LeakAnswer found = LeakAnswer.of(keywork, suspects, said);
        assertThat(found.suspects().stream().limit(2))
                .extracting(line -> line.cup().id())
                .contains("cup.g");
        assertThat(found.suspects())
                .allSatisfy(
                        line -> assertThat(found.becauses().leaves(line.share().because()))
                                .isNotEmpty());
        answers.replaceAll((note, says) -> Symptom.SPEAKS);
        PlayTest well = new PlayTest(
                "p.2", silent.conditions(), HeardBy.TYPED, List.of(), List.of(), answers, "", null, Stage.ARRIVAL);
        assertThat(LeakAnswer.of(keywork, suspects, well).suspects()).isEmpty();
        List<LeakAnswer.Suffers> suffers = LeakAnswer.suffering(
                keywork, ShopRules.shipped(), suspects, keywork.cups().get("cup.g"), 1.0, new Reasons());
        assertThat(suffers.getFirst().says()).isEqualTo(Symptom.FAILS);
        assertThat(suffers).allSatisfy(one -> assertThat(one.fingering().open()).doesNotContain("g"));
    }
}
