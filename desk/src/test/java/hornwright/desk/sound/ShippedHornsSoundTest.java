package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.HornAir;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirModel;
import hornwright.engines.air.AirResult;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shipped horns were tuned by another program; this one must hear them as that did. */
class ShippedHornsSoundTest {
    @ParameterizedTest
    @ValueSource(strings = {"alto", "tenor"})
    void every_fingering_sounds_within_a_tenth_of_a_cent_of_what_was_written_down(String voice) throws IOException {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-" + voice).orElseThrow();
        Properties written = written(voice);
        AirResult result = AirColumn.reckon(HornAir.asBuilt(keywork, AirModel.CHAIGNE_KERGOMARD.at(26.85)));
        for (int i = 0; i < keywork.fingerings().list().size(); i++) {
            Fingering fingering = keywork.fingerings().list().get(i);
            AirResult.Peak sounding =
                    Objects.requireNonNull(result.fingerings().get(i).sounding());
            double frequency = Double.parseDouble(written.getProperty(fingering.id()));
            double magnitude = Double.parseDouble(written.getProperty("magnitude." + fingering.id()));
            assertThat(1200 * Math.log(sounding.frequency() / frequency) / Math.log(2))
                    .as(fingering.id())
                    .isCloseTo(0, within(0.1));
            assertThat(sounding.magnitude() / magnitude).as(fingering.id()).isCloseTo(1, within(0.005));
        }
    }

    private static Properties written(String voice) throws IOException {
        Properties written = new Properties();
        try (InputStream in = ShippedHornsSoundTest.class.getResourceAsStream("/hornwright/air/" + voice + ".ref")) {
            written.load(Objects.requireNonNull(in));
        }
        return written;
    }
}
