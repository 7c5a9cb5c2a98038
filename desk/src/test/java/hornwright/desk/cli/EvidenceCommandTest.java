package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of looks from the command line. */
final class EvidenceCommandTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @Test
    void a_table_is_tried_brought_in_and_known_the_second_time() throws Exception {
        Path table =
                Files.writeString(folder.resolve("looks.csv"), "serial,voice,place,material\n50101,alto,foot.d,cork\n");
        assertThat(run(table, "--try").out()).contains("1 new horns, 1 new looks, 0 known; nothing written");
        assertThat(run(table).out()).contains("brought in");
        assertThat(run(table).out()).contains("0 new looks, 1 known; nothing written");
    }

    @Test
    void a_fault_ends_with_two_tells_line_and_column_and_leaves_no_output() throws Exception {
        Path table =
                Files.writeString(folder.resolve("looks.csv"), "serial,voice,place,material\n5o101,alto,foot.d,cork\n");
        Shell.Result said = run(table);
        assertThat(said.code()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("/line 2/serial", "digits", "41630");
    }

    private Shell.Result run(Path table, String... more) {
        String[] args = java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(
                                "evidence",
                                table.toString(),
                                "--maker",
                                "Tarrant & Loe",
                                "--data",
                                folder.resolve("shop").toString()),
                        java.util.stream.Stream.of(more))
                .toArray(String[]::new);
        return Shell.run("", args);
    }
}
