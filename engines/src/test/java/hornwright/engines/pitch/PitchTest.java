package hornwright.engines.pitch;

import static hornwright.engines.pitch.Sounds.RATE;
import static hornwright.engines.pitch.Sounds.SIX;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PitchTest {
    private static final Temperament CONCERT = new Temperament(440);

    private static List<Note> notes(double[] x, double rate) {
        return ((Heard.Notes) Pitch.hear(new Recording(x, rate))).notes();
    }

    private static Note only(double[] x) {
        List<Note> notes = notes(x, RATE);
        assertThat(notes).hasSize(1);
        return notes.getFirst();
    }

    private static String why(double[] x) {
        return ((Heard.Refused) Pitch.hear(new Recording(x, RATE))).why();
    }

    @Test
    void the_notes_have_the_frequencies_of_equal_temperament() {
        Ref ref = Ref.read("pitch/notes");
        String[] names = {"A2", "Bb2", "A3", "Bb3", "B3", "C4", "D4", "E4", "F4", "G4", "C5", "F6"};
        for (String name : names) {
            int note = CONCERT.nearest(ref.number(name));
            assertThat(Temperament.name(note)).isEqualTo(name);
            assertThat(CONCERT.frequency(note)).isCloseTo(ref.number(name), within(1e-6 * ref.number(name)));
        }
        assertThat(CONCERT.cents(441)).isCloseTo(ref.number("cents_441"), within(1e-5));
        assertThat(CONCERT.cents(435)).isCloseTo(ref.number("cents_435"), within(1e-5));
        assertThat(Temperament.cents(3, 2)).isCloseTo(ref.number("cents_fifth"), within(1e-5));
        assertThat(Temperament.cents(81, 80)).isCloseTo(ref.number("cents_comma"), within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(doubles = {58.27, 103.83, 138.59, 207.65, 440, 622.25, 932.3, 1396.9})
    void a_steady_tone_is_read_to_a_twentieth_of_a_cent(double frequency) {
        Note note = only(Sounds.tone(frequency, 1, RATE, SIX));
        assertThat(Temperament.cents(note.frequency(), frequency)).isCloseTo(0, within(0.05));
        assertThat(note.spreadCents()).isLessThan(0.2);
        assertThat(note.steady()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {103.83, 233.08, 440, 830.6})
    void two_other_methods_agree(double frequency) {
        double[] x = Sounds.tone(frequency, 1, RATE, 0.6, 1, 0.7, 0.5, 0.3, 0.2);
        double engine = only(x).frequency();
        double correlation = OtherMethods.byCorrelation(x, RATE, 10_000, 4096);
        double spectrum = OtherMethods.bySpectrum(x, RATE, 5_000, 32_768, frequency * 1.001);
        assertThat(Temperament.cents(engine, correlation)).isCloseTo(0, within(0.3));
        assertThat(Temperament.cents(engine, spectrum)).isCloseTo(0, within(0.05));
    }

    @ParameterizedTest
    @ValueSource(doubles = {8000, 22_050, 44_100, 48_000, 96_000})
    void the_rate_of_the_recording_makes_no_difference(double rate) {
        double[] x = Sounds.tone(311.13, 0.8, rate, 1, 0.5, 0.3);
        assertThat(Temperament.cents(notes(x, rate).getFirst().frequency(), 311.13))
                .isCloseTo(0, within(0.05));
    }

    @Test
    void a_scale_comes_back_note_by_note() {
        double[][] parts = new double[15][];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = Sounds.tongued(Sounds.tone(CONCERT.frequency(49 + 2 * i), 0.4, RATE, SIX));
        }
        List<Note> notes = notes(Sounds.oneAfterAnother(parts), RATE);
        assertThat(notes).hasSize(parts.length);
        for (int i = 0; i < parts.length; i++) {
            assertThat(CONCERT.nearest(notes.get(i).frequency())).isEqualTo(49 + 2 * i);
            assertThat(CONCERT.cents(notes.get(i).frequency())).isCloseTo(0, within(0.3));
            assertThat(notes.get(i).startS()).isCloseTo(0.4 * i, within(0.04));
            assertThat(notes.get(i).endS()).isCloseTo(0.4 * (i + 1), within(0.04));
        }
    }

    @Test
    void a_slurred_semitone_is_two_notes() {
        double[] x = Sounds.glide(t -> t < 0.5 ? 440 : 466.16, 1, RATE, SIX);
        assertThat(notes(x, RATE))
                .extracting(note -> CONCERT.nearest(note.frequency()))
                .containsExactly(69, 70);
    }

    @Test
    void the_same_note_tongued_twice_is_two_notes() {
        double[] once = Sounds.tongued(Sounds.tone(392, 0.4, RATE, SIX));
        assertThat(notes(Sounds.oneAfterAnother(once, Sounds.silence(0.03), once), RATE))
                .hasSize(2);
    }

    @Test
    void a_note_shorter_than_a_tenth_of_a_second_is_dropped() {
        double[] x = Sounds.oneAfterAnother(
                Sounds.silence(0.2),
                Sounds.tone(440, 0.06, RATE, SIX),
                Sounds.silence(0.2),
                Sounds.tone(440, 0.5, RATE, SIX));
        assertThat(notes(x, RATE)).hasSize(1);
    }

    @Test
    void vibrato_leaves_the_middle_and_shows_as_spread() {
        double[] x = Sounds.glide(t -> 440 * Math.pow(2, 15 * Math.sin(2 * Math.PI * 5 * t) / 1200), 2, RATE, SIX);
        Note note = only(x);
        assertThat(Temperament.cents(note.frequency(), 440)).isCloseTo(0, within(1.5));
        assertThat(note.spreadCents()).isBetween(11.0, 16.0);
        assertThat(note.steady()).isFalse();
    }

    @Test
    void breath_and_room_shift_a_tone_by_less_than_half_a_cent() {
        Random random = new Random(11);
        double[] x = Sounds.tone(277.18, 1, RATE, SIX);
        double[] breathy = Sounds.together(x, Sounds.noise(1, 0.01, random));
        assertThat(Temperament.cents(only(breathy).frequency(), 277.18)).isCloseTo(0, within(0.5));
        assertThat(Temperament.cents(only(Sounds.inARoom(x, 0.5, random)).frequency(), 277.18))
                .isCloseTo(0, within(0.5));
    }

    @Test
    void loudness_and_silence_before_it_change_nothing() {
        Random random = new Random(12);
        for (int i = 0; i < 10; i++) {
            double frequency = 60 * Math.pow(2, 4.5 * random.nextDouble());
            double[] x = Sounds.tone(frequency, 0.6, RATE, SIX);
            double plain = only(x).frequency();
            double soft = only(Sounds.louder(x, 0.02 + random.nextDouble())).frequency();
            double late = only(Sounds.oneAfterAnother(Sounds.silence(random.nextDouble()), x))
                    .frequency();
            assertThat(Temperament.cents(soft, plain)).isCloseTo(0, within(1e-6));
            assertThat(Temperament.cents(late, plain)).isCloseTo(0, within(0.1));
        }
    }

    @Test
    void a_weak_fundamental_is_still_the_note() {
        assertThat(CONCERT.nearest(only(Sounds.tone(116.54, 1, RATE, 0.05, 0.6, 1, 0.8, 0.5, 0.4, 0.3))
                        .frequency()))
                .isEqualTo(46);
    }

    @ParameterizedTest
    @ValueSource(doubles = {58.27, 116.54, 440, 1396.9})
    void a_clean_tone_at_full_scale_is_not_called_clipped(double frequency) {
        only(Sounds.louder(Sounds.tone(frequency, 1, RATE, 1), 2));
    }

    @Test
    void a_tone_cut_below_full_scale_is_called_clipped() {
        double[] cut = Sounds.louder(Sounds.tone(220, 1, RATE, SIX), 3);
        for (int i = 0; i < cut.length; i++) {
            cut[i] = Math.clamp(cut[i], -0.4, 0.4);
        }
        assertThat(why(cut)).contains("clipped");
    }

    @Test
    void clipped_silent_and_many_voiced_sound_is_refused_with_a_sentence() {
        double[] tone = Sounds.tone(440, 1, RATE, SIX);
        double[] clipped = Sounds.louder(tone, 5);
        for (int i = 0; i < clipped.length; i++) {
            clipped[i] = Math.clamp(clipped[i], -1.0, 1.0);
        }
        assertThat(why(clipped)).contains("clipped");
        assertThat(why(Sounds.silence(1))).contains("silent");
        assertThat(why(Sounds.together(tone, Sounds.tone(554.37, 1, RATE, SIX))))
                .contains("more than one voice");
        assertThat(why(Sounds.together(tone, Sounds.tone(659.26, 1, RATE, SIX))))
                .contains("more than one voice");
        assertThat(why(Sounds.noise(1, 0.1, new Random(1)))).contains("noise");
    }
}
