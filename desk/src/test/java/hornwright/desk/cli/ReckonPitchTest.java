package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.desk.sound.WavFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReckonPitchTest {
    @TempDir
    private Path folder;

    private Path tone;

    @BeforeEach
    void record_one_second_of_441() throws IOException {
        tone = folder.resolve("tone.wav");
        Files.write(tone, WavFile.of(WavFile.Sort.PCM, 16, 2, 44_100, 44_100, i -> {
            double turn = 2 * Math.PI * 441 * i / 44_100;
            return 0.4 * Math.sin(turn) + 0.2 * Math.sin(2 * turn);
        }));
    }

    @Test
    void a_recording_is_answered_on_one_line() {
        Shell.Result result = Shell.run("", "reckon", "pitch", tone.toString());
        assertThat(result.code()).isZero();
        assertThat(result.out().lines()).hasSize(1);
        JsonNode answer = JsonMapper.shared().readTree(result.out());
        JsonNode note = answer.get("notes").get(0);
        assertThat(note.get("name_concert").asString()).isEqualTo("A4");
        assertThat(note.get("name_written").isNull()).isTrue();
        assertThat(note.get("frequency_Hz").asDouble()).isCloseTo(441, within(0.01));
        assertThat(note.get("cents").asDouble()).isCloseTo(3.93, within(0.03));
        assertThat(note.get("steady").asBoolean()).isTrue();
        assertThat(answer.get("median_cents").asDouble()).isCloseTo(3.93, within(0.03));
        assertThat(answer.get("temperature_note").isNull()).isTrue();
    }

    @Test
    void the_note_is_named_as_an_alto_reads_it_over_another_reference() {
        Shell.Result result = Shell.run(
                "",
                "reckon",
                "pitch",
                tone.toString(),
                "--transpose-to",
                "alto",
                "--reference",
                "441",
                "--temperature-degC",
                "25");
        JsonNode answer = JsonMapper.shared().readTree(result.out());
        assertThat(answer.get("notes").get(0).get("name_written").asString()).isEqualTo("F#5");
        assertThat(answer.get("notes").get(0).get("cents").asDouble()).isCloseTo(0, within(0.03));
        assertThat(answer.get("temperature_note").asString()).contains("15 cents sharper");
    }

    @Test
    void json_a_missing_file_an_odd_voice_and_a_misplaced_option_are_refused() throws IOException {
        assertRefused(Shell.run("{}", "reckon", "pitch"), "needs a WAV file");
        assertRefused(Shell.run("", "reckon", "pitch", folder.resolve("no.wav").toString()), "no.wav");
        assertRefused(
                Shell.run("", "reckon", "pitch", tone.toString(), "--transpose-to", "flute"), "no voice \"flute\"");
        assertRefused(Shell.run("", "reckon", "pitch", tone.toString(), "--reference", "44"), "no pitch for A4");
        assertRefused(Shell.run("{}", "reckon", "leak", "--reference", "440"), "not leak");
        Path text = Files.writeString(folder.resolve("text.wav"), "{}");
        assertRefused(Shell.run("", "reckon", "pitch", text.toString()), "not a WAV file");
    }

    private static void assertRefused(Shell.Result result, String what) {
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains(what).contains("; right would be ");
    }
}
