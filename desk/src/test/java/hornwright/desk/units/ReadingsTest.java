package hornwright.desk.units;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.TrialVerdict;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ReadingsTest {
    @ParameterizedTest
    @ValueSource(strings = {"0.08 at 4", "0,08 at 4", "0.08 mm at 4", "0.08 @ 4", "0.08 4", "0.08 at 4 o'clock"})
    void a_rim_gap_says_how_wide_and_where_by_the_clock(String typed) {
        assertThat(says(ReadingKind.RIM_GAP, typed)).isEqualTo(new Observed.RimGap(0.08, null, 4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.08", "0.08 at 13", "0.08 at 0", "at 4", "wide at 4", ""})
    void a_rim_gap_without_a_place_on_the_clock_is_refused(String typed) {
        assertThat(Readings.read(ReadingKind.RIM_GAP, typed, LengthUnit.MILLIMETRE))
                .isInstanceOf(Readings.Outcome.Unclear.class);
    }

    @Test
    void a_play_is_said_across_then_along() {
        assertThat(says(ReadingKind.PLAY, "clear, felt"))
                .isEqualTo(new Observed.Play(PlayGrade.CLEAR, PlayGrade.JUST_FELT));
        assertThat(says(ReadingKind.PLAY, "c/f")).isEqualTo(new Observed.Play(PlayGrade.CLEAR, PlayGrade.JUST_FELT));
        assertThat(says(ReadingKind.PLAY, "loose")).isEqualTo(new Observed.Play(PlayGrade.LOOSE, PlayGrade.NONE));
        assertThat(Readings.read(ReadingKind.PLAY, "wobbly", LengthUnit.MILLIMETRE))
                .isInstanceOf(Readings.Outcome.Unclear.class);
    }

    @Test
    void a_trial_pad_says_its_stack_where_it_touched_and_the_feeler_opposite() {
        assertThat(says(ReadingKind.TRIAL_PAD, "4.4 back 0.27"))
                .isEqualTo(new Observed.TrialPad(4.4, TrialVerdict.BACK_FIRST, 0.27, null));
        assertThat(says(ReadingKind.TRIAL_PAD, "4,4 front first 0,11"))
                .isEqualTo(new Observed.TrialPad(4.4, TrialVerdict.FRONT_FIRST, 0.11, null));
        assertThat(says(ReadingKind.TRIAL_PAD, "4.4 level"))
                .isEqualTo(new Observed.TrialPad(4.4, TrialVerdict.LEVEL, 0, null));
        for (String typed : List.of("4.4", "4.4 back", "4.4 level 0.2", "back 0.27", "4.4 side 0.1")) {
            assertThat(Readings.read(ReadingKind.TRIAL_PAD, typed, LengthUnit.MILLIMETRE))
                    .as(typed)
                    .isInstanceOf(Readings.Outcome.Unclear.class);
        }
    }

    @Test
    void a_reading_is_typed_so_that_it_reads_back_as_itself() {
        for (Observed observed : List.of(
                new Observed.RimGap(0.081, null, 4.5),
                new Observed.Play(PlayGrade.JUST_FELT, PlayGrade.LOOSE),
                new Observed.TrialPad(4.4, TrialVerdict.FRONT_FIRST, 0.11, null),
                new Observed.TrialPad(4.4, TrialVerdict.LEVEL, 0, null))) {
            ReadingKind kind = switch (observed) {
                case Observed.RimGap gap -> ReadingKind.RIM_GAP;
                case Observed.Play play -> ReadingKind.PLAY;
                default -> ReadingKind.TRIAL_PAD;
            };
            assertThat(says(kind, Readings.typed(observed))).isEqualTo(observed);
        }
    }

    @Test
    void an_amount_is_more_than_nothing() {
        assertThat(Readings.read(ReadingKind.CUP_INSIDE, "0", LengthUnit.MILLIMETRE))
                .isInstanceOf(Readings.Outcome.Unclear.class);
        assertThat(Readings.read(ReadingKind.CUP_INSIDE, "-4", LengthUnit.MILLIMETRE))
                .isInstanceOf(Readings.Outcome.Unclear.class);
    }

    private static Observed says(ReadingKind kind, String typed) {
        assertThat(Readings.read(kind, typed, LengthUnit.MILLIMETRE))
                .as(typed)
                .isInstanceOf(Readings.Outcome.Says.class);
        return ((Readings.Outcome.Says) Readings.read(kind, typed, LengthUnit.MILLIMETRE)).observed();
    }
}
