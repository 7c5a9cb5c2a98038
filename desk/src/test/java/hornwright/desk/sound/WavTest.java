package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornwright.desk.json.BadInput;
import hornwright.desk.sound.WavFile.Sort;
import hornwright.engines.pitch.Recording;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WavTest {
    private static double sine(int i) {
        return 0.7 * Math.sin(0.05 * i);
    }

    @ParameterizedTest
    @CsvSource({
        "PCM, 8, 1, 8000, 0.02", "PCM, 16, 1, 44100, 1e-4", "PCM, 16, 2, 48000, 1e-4", "PCM, 24, 2, 96000, 1e-6",
        "PCM, 32, 1, 44100, 1e-8", "FLOAT, 32, 1, 44100, 1e-7", "FLOAT, 64, 2, 192000, 1e-15",
                "EXTENSIBLE, 24, 2, 48000, 1e-6"
    })
    void every_sort_of_sample_comes_back(Sort sort, int bits, int channels, int rate, double error) {
        Recording read = Wav.read(WavFile.of(sort, bits, channels, rate, 500, WavTest::sine));
        assertThat(read.rate()).isEqualTo(rate);
        assertThat(read.samples()).hasSize(500);
        for (int i = 0; i < 500; i++) {
            assertThat(read.samples()[i]).isCloseTo(sine(i), within(error));
        }
    }

    @Test
    void a_file_cut_short_is_refused_with_a_sentence() {
        byte[] whole = WavFile.of(Sort.PCM, 16, 1, 44_100, 500, WavTest::sine);
        for (int length : new int[] {0, 3, 11, 12, 30, 43, 44, 500}) {
            assertThatThrownBy(() -> Wav.read(Arrays.copyOf(whole, length)))
                    .as("%d bytes", length)
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("WAV");
        }
    }

    @Test
    void three_channels_an_odd_depth_and_an_odd_rate_are_refused() {
        assertThatThrownBy(() -> Wav.read(WavFile.of(Sort.PCM, 16, 3, 44_100, 9, WavTest::sine)))
                .hasMessageContaining("3 channels");
        assertThatThrownBy(() -> Wav.read(WavFile.of(Sort.EXTENSIBLE, 20, 2, 44_100, 0, WavTest::sine)))
                .hasMessageContaining("20 bits");
        assertThatThrownBy(() -> Wav.read(WavFile.of(Sort.PCM, 16, 1, 100, 9, WavTest::sine)))
                .hasMessageContaining("100 samples a second");
    }
}
