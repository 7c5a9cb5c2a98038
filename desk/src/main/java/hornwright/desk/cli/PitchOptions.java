package hornwright.desk.cli;

import hornwright.bench.horn.Voice;
import hornwright.desk.json.BadInput;
import hornwright.desk.reckon.PitchReckon;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How {@code reckon pitch} is to hear. */
final class PitchOptions {
    private static final double USUAL = 440;

    @Option(names = "--reference", paramLabel = "HZ", description = "pitch: frequency of A4, 440 unless said otherwise")
    private @Nullable Double reference;

    @Option(names = "--transpose-to", paramLabel = "VOICE", description = "pitch: name notes as written for this voice")
    private @Nullable String transposeTo;

    @Option(names = "--temperature-degC", paramLabel = "T", description = "pitch: air in the horn")
    private @Nullable Double temperature;

    PitchReckon.Wishes wishes() {
        return new PitchReckon.Wishes(reference == null ? USUAL : reference, voice(), temperature);
    }

    /** These mean nothing to another engine; passing them over would hide a mistake. */
    void refuseFor(String engine) {
        if (reference != null || transposeTo != null || temperature != null) {
            throw new BadInput(
                    "",
                    "--reference, --transpose-to and --temperature-degC are for pitch, not " + engine,
                    "reckon " + engine);
        }
    }

    private @Nullable Voice voice() {
        String wanted = transposeTo;
        if (wanted == null) {
            return null;
        }
        return Arrays.stream(Voice.values())
                .filter(voice -> voice.word().equals(wanted.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new BadInput(
                        "--transpose-to",
                        "there is no voice \"" + wanted + "\"",
                        "one of "
                                + Arrays.stream(Voice.values()).map(Voice::word).collect(Collectors.joining(", "))));
    }
}
