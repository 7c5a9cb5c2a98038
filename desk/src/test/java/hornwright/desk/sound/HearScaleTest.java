package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.PlayTest.Playing;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class HearScaleTest {
    private static final int RATE = 44_100;
    private static final double NOTE_S = 0.5;
    private static final double GAP_S = 0.1;
    private final Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    /** One fingering for each semitone of the horn, lowest first. */
    private List<Fingering> scale() {
        List<Fingering> scale = new ArrayList<>();
        for (Fingering fingering : keywork.fingerings()) {
            int semitone = WrittenNote.concert(keywork, fingering);
            boolean fresh = scale.isEmpty() || WrittenNote.concert(keywork, scale.getLast()) < semitone;
            if (fresh) {
                scale.add(fingering);
            }
        }
        return scale;
    }

    private byte[] played(List<Fingering> scale, double reference, ToDoubleFunction<Fingering> cents) {
        double[] sound = new double[(int) (scale.size() * (NOTE_S + GAP_S) * RATE)];
        for (int n = 0; n < scale.size(); n++) {
            Fingering note = scale.get(n);
            double hz = WrittenNote.place(keywork, note, reference) * Math.pow(2, cents.applyAsDouble(note) / 1200);
            int from = (int) (n * (NOTE_S + GAP_S) * RATE);
            for (int i = 0; i < NOTE_S * RATE; i++) {
                double fade = Math.min(1, Math.min(i, NOTE_S * RATE - i) / (0.02 * RATE));
                for (int partial = 1; partial <= 6; partial++) {
                    sound[from + i] += 0.2 * fade / partial * Math.sin(2 * Math.PI * partial * hz * i / RATE);
                }
            }
        }
        return WavFile.of(RATE, sound);
    }

    @Test
    void a_chromatic_scale_becomes_the_notes_of_the_horn_with_their_cents() {
        List<Fingering> scale = scale();
        assertThat(scale).hasSize(32);
        HearScale heard = HearScale.of(played(scale, 442, this::crooked), keywork, 442);
        assertThat(heard).isInstanceOfSatisfying(HearScale.Notes.class, notes -> {
            assertThat(notes.scale().leftOut()).isEmpty();
            assertThat(notes.scale().notes()).hasSize(32);
            for (int i = 0; i < scale.size(); i++) {
                Playing note = notes.scale().notes().get(i);
                assertThat(WrittenNote.of(
                                keywork.fingerings().get(note.fingering()).written()))
                        .isEqualTo(WrittenNote.of(scale.get(i).written()));
                assertThat(note.cents()).as(note.fingering()).isCloseTo(crooked(scale.get(i)), within(0.5));
            }
        });
    }

    /** Forty cents flat all over, and each note its own way. */
    private double crooked(Fingering note) {
        return -40 + 12 * Math.sin(WrittenNote.concert(keywork, note));
    }

    @Test
    void what_is_no_sound_of_a_horn_is_refused_with_a_sentence() {
        assertThat(HearScale.of(WavFile.of(RATE, new double[RATE]), keywork, 440))
                .isInstanceOfSatisfying(
                        HearScale.Refused.class, no -> assertThat(no.why()).contains("silent"));
        assertThat(HearScale.of("no wav at all".getBytes(java.nio.charset.StandardCharsets.UTF_8), keywork, 440))
                .isInstanceOfSatisfying(
                        HearScale.Refused.class,
                        no -> assertThat(no.why()).contains("not a WAV file").endsWith("."));
    }

    @Test
    void a_note_beyond_the_horn_is_left_out_by_name() {
        double[] sound = new double[RATE];
        for (int i = 0; i < RATE; i++) {
            sound[i] = 0.3 * Math.sin(2 * Math.PI * 1760 * i / RATE);
        }
        assertThat(HearScale.of(WavFile.of(RATE, sound), keywork, 440))
                .isInstanceOfSatisfying(
                        HearScale.Refused.class,
                        no -> assertThat(no.why()).contains("A6").contains("no note of this horn"));
    }
}
