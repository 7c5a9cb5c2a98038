package hornwright.engines;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class RefTest {
    @Test
    void every_reference_file_names_its_source_and_its_tolerance() throws IOException, URISyntaxException {
        Path root = Path.of(
                Objects.requireNonNull(Ref.class.getResource("/hornwright")).toURI());
        List<Path> files;
        try (var tree = Files.walk(root)) {
            files = tree.filter(path -> path.toString().endsWith(".ref")).toList();
        }
        assertThat(files).isNotEmpty();
        for (Path file : files) {
            List<String> lines = Files.readAllLines(file);
            assertThat(lines).as(file.toString()).anyMatch(line -> line.matches("source\\s*=\\s*\\S.*"));
            assertThat(lines).as(file.toString()).anyMatch(line -> line.matches("tolerance\\S*\\s*=\\s*\\S.*"));
        }
    }
}
