package hornwright.desk.keyworkfile;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class KeyworkFileTest {
    static final List<String> SHIPPED = KeyworkFile.SHIPPED;

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void a_shipped_keywork_survives_being_written_and_read_again(String name) {
        Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
        assertThat(KeyworkFile.read(KeyworkFile.write(keywork))).isEqualTo(keywork);
    }
}
