package hornwright.desk.reckon;

import hornwright.bench.horn.Voice;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.sound.Wav;
import hornwright.engines.pitch.Heard;
import hornwright.engines.pitch.Note;
import hornwright.engines.pitch.Pitch;
import hornwright.engines.pitch.Temperament;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Notes in a recording. It alone takes a sound file instead of JSON, and its wishes as options. */
public final class PitchReckon implements Engine {
    /**
     * How it is to be heard.
     *
     * @param reference frequency of A4, Hz
     * @param voice for written names; null when none are wanted
     * @param temperatureDegC of the air in the horn; null when nobody measured it
     */
    public record Wishes(
            double reference,
            @Nullable Voice voice,
            @Nullable Double temperatureDegC) {
        public Wishes {
            if (!(reference >= 390 && reference <= 490)) {
                throw new BadInput("--reference", reference + " Hz is no pitch for A4", "--reference 440");
            }
            if (temperatureDegC != null && !(temperatureDegC >= -20 && temperatureDegC <= 60)) {
                throw new BadInput(
                        "--temperature-degC", temperatureDegC + " °C is no air to play in", "--temperature-degC 21.5");
            }
        }
    }

    private static final double USUAL_DEG_C = 20;
    private static final double ZERO_K = 273.15;

    @Override
    public String name() {
        return "pitch";
    }

    @Override
    public String question() {
        return "which notes a recording holds and how they were in tune";
    }

    /** JSON says nothing about a sound; a person who sends some is told what to send. */
    @Override
    public Reckoning read(Fields in) {
        throw new BadInput("", "pitch hears a WAV file, not JSON", "hornwright reckon pitch scale.wav --reference 440");
    }

    /** What is heard in one WAV file. */
    public static Answer hear(byte[] wav, Wishes wishes) {
        return switch (Pitch.hear(Wav.read(wav))) {
            case Heard.Refused refused ->
                throw new BadInput("", refused.why(), "a recording of one horn playing one note after another");
            case Heard.Notes notes -> Answer.of(out(notes.notes(), wishes));
        };
    }

    private static Out out(List<Note> notes, Wishes wishes) {
        Temperament temperament = new Temperament(wishes.reference());
        double[] steady = notes.stream()
                .filter(Note::steady)
                .mapToDouble(note -> temperament.cents(note.frequency()))
                .sorted()
                .toArray();
        return Out.object()
                .put(
                        "notes",
                        notes.stream()
                                .map(note -> out(note, temperament, wishes))
                                .toList())
                .put("median_cents", steady.length == 0 ? null : (Double) median(steady))
                .put("temperature_note", temperatureNote(wishes.temperatureDegC()));
    }

    private static Out out(Note note, Temperament temperament, Wishes wishes) {
        int semitone = temperament.nearest(note.frequency());
        Voice voice = wishes.voice();
        return Out.object()
                .put("start_s", note.startS())
                .put("end_s", note.endS())
                .put("name_concert", Temperament.name(semitone))
                .put(
                        "name_written",
                        voice == null ? null : Temperament.name(semitone - voice.writtenToConcertSemitones()))
                .put("frequency_Hz", note.frequency())
                .put("cents", temperament.cents(note.frequency()))
                .put("spread_cents", note.spreadCents())
                .put("steady", note.steady());
    }

    private static double median(double[] sorted) {
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** The speed of sound goes with the root of the absolute temperature, and the pitch of a horn with it. */
    private static @Nullable String temperatureNote(@Nullable Double degC) {
        if (degC == null) {
            return null;
        }
        double cents = 600 * Math.log((degC + ZERO_K) / (USUAL_DEG_C + ZERO_K)) / Math.log(2);
        if (Math.abs(cents) < 0.5) {
            return "At %.1f °C the air plays as at %.0f °C.".formatted(degC, USUAL_DEG_C);
        }
        return String.format(
                Locale.ROOT,
                "At %.1f °C the air alone plays %.0f cents %s than at %.0f °C.",
                degC,
                Math.abs(cents),
                cents > 0 ? "sharper" : "flatter",
                USUAL_DEG_C);
    }
}
