package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.pitch.Heard;
import hornwright.engines.pitch.Note;
import hornwright.engines.pitch.Pitch;
import hornwright.engines.pitch.Recording;
import hornwright.engines.pitch.Temperament;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Saxophones rendered from a free General MIDI sound font of Debian (package timgm6mb-soundfont, or fluid-soundfont-gm) by
 * fluidsynth. How the samples are tuned nobody states, so notes are told by name and cents by how much sharper a faster copy is.
 */
@Tag("deep")
@Tag("sound")
class RenderedHornTest {
    private static final List<Path> FONTS =
            List.of(Path.of("/usr/share/sounds/sf2/TimGM6mb.sf2"), Path.of("/usr/share/sounds/sf2/FluidR3_GM.sf2"));
    private static final int TICKS = 480;
    private static final int NOTE = 860;
    private static final Temperament CONCERT = new Temperament(440);

    private static Path font;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @BeforeAll
    static void find() throws IOException, InterruptedException {
        if (found().isEmpty() || run("fluidsynth", "--version") != 0) {
            run("apt-get", "update");
            run("apt-get", "install", "-y", "--no-install-recommends", "fluidsynth", "timgm6mb-soundfont");
        }
        font = found().orElseThrow(() -> new IllegalStateException(
                "no sound font: install the Debian packages fluidsynth and timgm6mb-soundfont"));
    }

    private static Optional<Path> found() {
        return FONTS.stream().filter(Files::exists).findFirst();
    }

    private static int run(String... command) throws InterruptedException {
        try {
            return new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
        } catch (IOException none) {
            return -1;
        }
    }

    /** Program numbers of General MIDI from 0; lowest and highest concert note of each horn. */
    @ParameterizedTest
    @CsvSource({"64, 56, 88", "65, 49, 81", "66, 44, 76", "67, 37, 69"})
    void every_note_of_a_rendered_scale_is_heard_by_name_in_a_room_and_without(int program, int lowest, int highest)
            throws Exception {
        for (boolean room : new boolean[] {false, true}) {
            List<Note> heard = notes(Wav.read(rendered(scale(program, lowest, highest), room)));
            List<Integer> names = new ArrayList<>();
            for (Note note : heard) {
                int name = CONCERT.nearest(note.frequency());
                // the tail of a room may swell once more and count as the same note again
                if (!room || names.isEmpty() || names.getLast() != name) {
                    names.add(name);
                }
            }
            List<Integer> played = Stream.iterate(lowest, note -> note <= highest, note -> note + 1)
                    .toList();
            assertThat(names).as("program %d, room %s", program, room).isEqualTo(played);
        }
    }

    /** The synthesizer bends in whole cents; the same recording played faster is sharper by exactly so much. */
    @ParameterizedTest
    @CsvSource({"64, 60, 84", "65, 52, 76", "66, 47, 71", "67, 40, 64"})
    void the_same_scale_played_faster_is_heard_sharper_by_just_as_much(int program, int lowest, int highest)
            throws Exception {
        Recording straight = Wav.read(rendered(scale(program, lowest, highest), false));
        List<Note> first = notes(straight);
        assertThat(first).hasSizeGreaterThanOrEqualTo(24);
        for (double cents : new double[] {-35, 12, 48}) {
            List<Note> second = notes(new Recording(straight.samples(), straight.rate() * Math.pow(2, cents / 1200)));
            assertThat(second).hasSameSizeAs(first);
            double[] off = new double[first.size()];
            for (int i = 0; i < second.size(); i++) {
                double heard = Temperament.cents(
                        second.get(i).frequency(), first.get(i).frequency());
                // the median of a note that wanders is taken at other moments
                double wander = 0.3 + 0.2 * first.get(i).spreadCents();
                assertThat(heard).as("program %d, note %d", program, lowest + i).isCloseTo(cents, within(wander));
                off[i] = heard - cents;
            }
            java.util.Arrays.sort(off);
            assertThat(off[off.length / 2])
                    .as("middle one of program %d", program)
                    .isCloseTo(0, within(0.3));
        }
    }

    /** What docs/method/pitch.md owns up to: an exact octave has the partials of its lower voice and nothing else. */
    @Test
    void two_horns_an_octave_apart_are_heard_as_the_lower_and_a_fifth_apart_refused() throws Exception {
        Heard octave = Pitch.hear(Wav.read(rendered(together(52, 64), false)));
        assertThat(octave)
                .isInstanceOfSatisfying(
                        Heard.Notes.class,
                        notes -> assertThat(notes.notes())
                                .isNotEmpty()
                                .allSatisfy(note -> assertThat(CONCERT.nearest(note.frequency()))
                                        .isEqualTo(52)));
        assertThat(Pitch.hear(Wav.read(rendered(together(52, 59), false)))).isInstanceOf(Heard.Refused.class);
        assertThat(Pitch.hear(Wav.read(rendered(together(52, 56), false)))).isInstanceOf(Heard.Refused.class);
    }

    private static List<Note> notes(Recording recording) {
        Heard heard = Pitch.hear(recording);
        if (heard instanceof Heard.Notes notes) {
            return notes.notes();
        }
        throw new AssertionError(((Heard.Refused) heard).why());
    }

    private byte[] rendered(Sequence sequence, boolean room) throws IOException, InterruptedException {
        File midi = folder.resolve("scale.mid").toFile();
        MidiSystem.write(sequence, 0, midi);
        Path wav = folder.resolve("scale.wav");
        String reverb = room ? "yes" : "no";
        assertThat(run(
                        "fluidsynth",
                        "-ni",
                        "-g",
                        "0.6",
                        "-r",
                        "44100",
                        "-o",
                        "synth.reverb.active=" + reverb,
                        "-o",
                        "synth.chorus.active=no",
                        "-F",
                        wav.toString(),
                        font.toString(),
                        midi.toString()))
                .isZero();
        return Files.readAllBytes(wav);
    }

    private static Sequence scale(int program, int lowest, int highest) throws InvalidMidiDataException {
        Sequence sequence = new Sequence(Sequence.PPQ, TICKS);
        Track track = sequence.createTrack();
        add(track, 0, ShortMessage.PROGRAM_CHANGE, program, 0);
        int at = TICKS / 2;
        for (int note = lowest; note <= highest; note++) {
            add(track, at, ShortMessage.NOTE_ON, note, 96);
            add(track, at + NOTE, ShortMessage.NOTE_OFF, note, 0);
            at += NOTE + 340;
        }
        add(track, at + TICKS, ShortMessage.NOTE_OFF, 0, 0);
        return sequence;
    }

    private static Sequence together(int low, int high) throws InvalidMidiDataException {
        Sequence sequence = new Sequence(Sequence.PPQ, TICKS);
        Track track = sequence.createTrack();
        add(track, 0, ShortMessage.PROGRAM_CHANGE, 65, 0);
        for (int note : new int[] {low, high}) {
            add(track, TICKS / 2, ShortMessage.NOTE_ON, note, 96);
            add(track, TICKS * 3, ShortMessage.NOTE_OFF, note, 0);
        }
        add(track, TICKS * 4, ShortMessage.NOTE_OFF, 0, 0);
        return sequence;
    }

    private static void add(Track track, long at, int command, int first, int second) throws InvalidMidiDataException {
        track.add(new MidiEvent(new ShortMessage(command, 0, first, second), at));
    }
}
