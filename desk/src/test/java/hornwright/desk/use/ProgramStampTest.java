package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ProgramStampTest {
    private static final FileTime NOON = FileTime.fromMillis(1_700_000_000_000L);

    @TempDir
    private Path folder;

    private Path one = Path.of("");
    private Path two = Path.of("");

    @BeforeEach
    void two_jars() throws IOException {
        one = write("one.jar", "aaaa", NOON);
        two = write("two.jar", "bbbb", NOON);
    }

    @Test
    void the_same_jars_have_the_same_stamp() {
        assertThat(stamp()).isPresent().isEqualTo(stamp());
    }

    @Test
    void a_jar_of_another_size_or_time_has_another_stamp() throws IOException {
        Optional<String> before = stamp();
        write("two.jar", "bbbbb", NOON);
        Optional<String> larger = stamp();
        write("two.jar", "bbbb", FileTime.fromMillis(NOON.toMillis() + 1));

        assertThat(larger).isNotEqualTo(before);
        assertThat(stamp()).isNotEqualTo(before).isNotEqualTo(larger);
    }

    @Test
    void a_folder_of_classes_has_none() {
        assertThat(ProgramStamp.of(one + File.pathSeparator + folder)).isEmpty();
        assertThat(ProgramStamp.of("")).isEmpty();
    }

    private Optional<String> stamp() {
        return ProgramStamp.of(one + File.pathSeparator + two);
    }

    private Path write(String name, String text, FileTime time) throws IOException {
        Path file = Files.writeString(folder.resolve(name), text);
        return Files.setLastModifiedTime(file, time);
    }
}
