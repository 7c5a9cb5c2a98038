package hornwright.desk.sound;

import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.ScaleHeard;
import hornwright.desk.json.BadInput;
import hornwright.engines.pitch.Heard;
import hornwright.engines.pitch.Pitch;

/** What a sound file holds for one horn. */
public sealed interface HearScale {
    /** Notes of this horn, at least one. */
    record Notes(ScaleHeard scale) implements HearScale {}

    /** Nothing to use, and why, as a sentence. */
    record Refused(String why) implements HearScale {}

    /** @param referenceHz frequency of A4 */
    static HearScale of(byte[] wav, Keywork keywork, double referenceHz) {
        try {
            return switch (Pitch.hear(Wav.read(wav))) {
                case Heard.Refused refused -> new Refused(refused.why());
                case Heard.Notes notes -> named(ScaleHeard.of(keywork, notes.notes(), referenceHz));
            };
        } catch (BadInput bad) {
            String what = bad.faults().getFirst().what();
            return new Refused(what.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + what.substring(1) + "; send "
                    + bad.faults().getFirst().example() + ".");
        }
    }

    private static HearScale named(ScaleHeard scale) {
        if (!scale.notes().isEmpty()) {
            return new Notes(scale);
        }
        String first = scale.leftOut().isEmpty() ? "" : ": " + scale.leftOut().getFirst();
        return new Refused("No steady note of this horn was heard" + first + ".");
    }
}
