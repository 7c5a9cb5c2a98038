package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.json.StrictJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("slow")
final class PlanCommandTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"job", "job-ten-minutes"})
    void the_example_is_planned_into_a_folder(String example) throws IOException {
        Path job = folder.resolve("job.json");
        Files.writeString(job, Shell.run("", "example", example).out());
        Path out = folder.resolve("deep/plan");
        Shell.Result result = Shell.run("", "plan", job.toString(), "--out", out.toString());
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(names(out)).contains("plan.json", "order-list.csv", "prep-list.csv");
        assertThat(result.out().lines()).allMatch(line -> Files.exists(Path.of(line)));
        var plan = StrictJson.object(Files.readString(out.resolve("plan.json")));
        assertThat(plan.get("engine_version").asString()).isEqualTo(Version.NUMBER);
        assertThat(plan.get("inputs").get("serial").asLong()).isEqualTo(41207);
    }

    @Test
    void the_same_job_gives_the_same_bytes() throws IOException {
        Path job = folder.resolve("job.json");
        Files.writeString(job, Shell.run("", "example", "job").out());
        Shell.run("", "plan", job.toString(), "--out", folder.resolve("one").toString());
        Shell.run("", "plan", job.toString(), "--out", folder.resolve("two").toString());
        for (String name : List.of("plan.json", "order-list.csv", "prep-list.csv")) {
            assertThat(folder.resolve("one").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("two").resolve(name));
        }
    }

    @Test
    void with_a_fault_anywhere_nothing_is_written_and_every_fault_is_told() throws IOException {
        Path job = folder.resolve("job.json");
        Files.writeString(
                job, "{\"keywork\": \"tarrant-loe-alto\", \"voice\": \"alto\", \"use\": \"show\", \"extra\": 1}");
        Path out = folder.resolve("plan");
        Shell.Result result = Shell.run("", "plan", job.toString(), "--out", out.toString());
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err().lines()).hasSize(2).allMatch(line -> line.contains("; right would be "));
        assertThat(out).doesNotExist();
    }

    @Test
    void a_fault_leaves_an_older_plan_as_it_was() throws IOException {
        Path job = folder.resolve("job.json");
        Path out = Files.createDirectory(folder.resolve("plan"));
        Files.writeString(out.resolve("plan.json"), "older");
        Files.writeString(job, "{}");
        assertThat(Shell.run("", "plan", job.toString(), "--out", out.toString())
                        .code())
                .isEqualTo(2);
        assertThat(out.resolve("plan.json")).hasContent("older");
        assertThat(names(out)).containsExactly("plan.json");
    }

    @Test
    void a_job_that_is_not_there_and_a_file_in_place_of_the_folder_are_told() throws IOException {
        Shell.Result missing = Shell.run("", "plan", folder.resolve("none.json").toString(), "--out", "x");
        assertThat(missing.code()).isEqualTo(2);
        assertThat(missing.err()).contains("none.json");
        Path job = folder.resolve("job.json");
        Files.writeString(job, Shell.run("", "example", "job-ten-minutes").out());
        Shell.Result blocked = Shell.run("", "plan", job.toString(), "--out", job.toString());
        assertThat(blocked.code()).isEqualTo(2);
        assertThat(blocked.err()).contains("not a folder");
    }

    @Test
    void the_lists_are_comma_separated_with_numbers_as_numbers() throws IOException {
        Path job = folder.resolve("job.json");
        Files.writeString(job, Shell.run("", "example", "job").out());
        Shell.run("", "plan", job.toString(), "--out", folder.toString(), "--json");
        String orders = Files.readString(folder.resolve("order-list.csv"));
        assertThat(orders)
                .startsWith("goods,material,diameter_mm,")
                .contains("\r\npad,")
                .contains(",35.0,4.3,4.3,");
        assertThat(Files.readString(folder.resolve("prep-list.csv"))).startsWith("place,name,treatment,");
    }

    private static List<String> names(Path out) throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
