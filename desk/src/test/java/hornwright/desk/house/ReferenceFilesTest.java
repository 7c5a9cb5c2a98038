package hornwright.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A check value from outside without its source is a rumour. */
final class ReferenceFilesTest {
    @Test
    void every_reference_file_names_its_source_and_tolerance() throws IOException {
        List<Path> all = Stream.of("engines", "bench", "desk")
                .flatMap(module ->
                        Checkout.files(Checkout.root().resolve(module).resolve("src/test/resources"), ".ref").stream())
                .toList();
        assertThat(all).as("reference files").isNotEmpty();
        for (Path file : all) {
            Properties keys = new Properties();
            keys.load(new StringReader(Checkout.text(file)));
            assertThat(keys.getProperty("source", "")).as("source of " + file).isNotBlank();
            assertThat(keys.getProperty("tolerance", ""))
                    .as("tolerance of " + file)
                    .isNotBlank();
        }
    }
}
