package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Play, look, decide: by microphone, by file and by typing. */
final class SoundTest {
    private static final int RATE = 48_000;
    private static final double NOTE_S = 0.45;
    /** Written D4 to C♯5 of an alto, first by semitones of the concert. */
    private static final int FIRST = 53;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    @Test
    void a_scale_through_the_microphone_is_advice_in_less_than_ten_seconds() throws Exception {
        Path file = Files.write(folder.resolve("scale.wav"), wav(scale(12)));
        try (Program program = Program.start(folder.resolve("heard"), "--demo");
                Browser browser = Browser.open(List.of(
                        "--use-fake-device-for-media-stream",
                        "--use-fake-ui-for-media-stream",
                        "--use-file-for-fake-audio-capture=" + file + "%noloop"))) {
            Page page = browser.page();
            page.navigate(program.address() + "/horn/q-0001/sound");
            Locator record = page.locator("button.record");
            record.click();
            assertThat(record).hasText("Stop and listen");
            assertThat(page.locator(".mic-said"))
                    .containsText(
                            Pattern.compile("^8 s"),
                            new com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions()
                                    .setTimeout(30_000));
            Instant stopped = Instant.now();
            record.click();
            assertThat(page.locator(".tests li").first()).containsText("microphone");
            assertThat(page.locator("svg.tuning")).isVisible();
            Assertions.assertThat(Duration.between(stopped, Instant.now())).isLessThan(Duration.ofSeconds(10));
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void without_scripts_a_file_is_heard_and_an_offered_height_accepted_and_taken_back() throws Exception {
        Path file = Files.write(folder.resolve("file.wav"), wav(scale(12)));
        Path silent = Files.write(folder.resolve("silent.wav"), wav(new double[RATE]));
        try (Program program = Program.start(folder.resolve("plain"), "--demo");
                Browser browser = Browser.open()) {
            Page page = browser.page(390, 844, ColorScheme.LIGHT, false);
            page.navigate(program.address() + "/horn/q-0001/sound");
            assertThat(page.locator("button.record")).isHidden();
            page.locator(".height .go").first().click();
            assertThat(page.locator(".height").first()).containsText(Pattern.compile("accepted on .* for "));
            page.locator(".height .go.second").first().click();
            assertThat(page.getByText("accepted on")).hasCount(0);
            page.setInputFiles("#sound-file", silent);
            page.locator("button.send").click();
            assertThat(page.locator(".troubles")).containsText("silent");
            page.setInputFiles("#sound-file", file);
            page.fill("#f-insertion", "16,5");
            page.locator("button.send").click();
            assertThat(page.locator(".tests li").first()).containsText("12 notes, sound file");
            assertThat(page.locator(".tests li").first()).containsText("16.5 mm on the cork");
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void low_notes_that_jump_point_to_pads_and_what_changed_is_told_from_what_only_seems_to() throws Exception {
        try (Program program = Program.start(folder.resolve("leaks"), "--demo");
                Browser browser = Browser.open()) {
            Page page = browser.page(820, 1180, ColorScheme.DARK, false);
            page.navigate(program.address() + "/horn/q-0001/sound/leak");
            for (String note : List.of("note.b-flat-3", "note.b-3", "note.c-4", "note.d-4", "note.e-4")) {
                page.locator("input[name=fails][value='" + note + "']").check();
            }
            page.locator(".said .go").click();
            assertThat(page.locator(".suspects li").first()).containsText("of the suspicion");
            page.locator(".suspects li").first().getByText("How much?").click();
            assertThat(page.locator("table.ruled tbody tr").first()).containsText("dB");
            page.locator("table.ruled a.why").first().click();
            assertThat(page.locator(".reasons")).containsText("round leak");
            page.navigate(program.address() + "/horn/q-0001/sound/before");
            assertThat(page.locator(".lead")).containsText("One play test is not enough");
            page.navigate(program.address() + "/horn/q-0001/sound");
            page.setInputFiles("#sound-file", Files.write(folder.resolve("again.wav"), wav(scale(12))));
            page.locator("button.send").click();
            page.navigate(program.address() + "/horn/q-0001/sound/before");
            assertThat(page.locator(".known")).containsText("notes");
            assertThat(page.locator("svg.tuning")).isVisible();
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    /** So many semitones upwards, the third of them 18 cents flat. */
    private static double[] scale(int notes) {
        double[] sound = new double[(int) (RATE * (0.5 + notes * NOTE_S))];
        for (int note = 0; note < notes; note++) {
            double hz = 440 * Math.pow(2, (FIRST + note - 69) / 12.0 - (note == 2 ? 18.0 / 1200 : 0));
            int from = (int) (RATE * (0.3 + note * NOTE_S));
            int length = (int) (RATE * NOTE_S * 0.85);
            for (int i = 0; i < length; i++) {
                double fade = Math.min(1, Math.min(i, length - i) / 600.0);
                for (int partial = 1; partial <= 5; partial++) {
                    sound[from + i] += 0.25 * fade / partial * Math.sin(2 * Math.PI * partial * hz * i / RATE);
                }
            }
        }
        return sound;
    }

    private static byte[] wav(double[] sound) throws IOException {
        ByteBuffer out = ByteBuffer.allocate(44 + 2 * sound.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(word("RIFF")).putInt(36 + 2 * sound.length).put(word("WAVEfmt "));
        out.putInt(16).putShort((short) 1).putShort((short) 1).putInt(RATE).putInt(2 * RATE);
        out.putShort((short) 2).putShort((short) 16).put(word("data")).putInt(2 * sound.length);
        for (double x : sound) {
            out.putShort((short) Math.round(x * 32_767));
        }
        return out.array();
    }

    private static byte[] word(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
