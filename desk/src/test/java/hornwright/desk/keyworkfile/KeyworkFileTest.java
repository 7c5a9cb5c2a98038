package hornwright.desk.keyworkfile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeyworkFileTest {
    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor"})
    void a_shipped_keywork_survives_being_written_and_read_again(String name) {
        Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
        assertThat(KeyworkFile.read(KeyworkFile.write(keywork))).isEqualTo(keywork);
    }
}
