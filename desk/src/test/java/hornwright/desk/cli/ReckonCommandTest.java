package hornwright.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.reckon.Engine;
import hornwright.desk.reckon.Engines;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class ReckonCommandTest {
    /** Engines that read JSON; the one that reads sound has tests of its own. */
    static Stream<String> jsonEngines() {
        return Engines.all().stream().map(Engine::name).filter(name -> !name.equals("pitch"));
    }

    @ParameterizedTest
    @MethodSource("jsonEngines")
    void the_example_of_every_engine_runs(String engine) {
        String example = Shell.run("", "example", engine).out();
        Shell.Result result = Shell.run(example, "reckon", engine);
        assertThat(result.err()).isEmpty();
        assertThat(result.code()).isZero();
        assertThat(result.out()).endsWith("}\n").startsWith("{");
        assertThat(result.out().lines()).hasSize(1);
    }

    @ParameterizedTest
    @MethodSource("jsonEngines")
    void one_fault_in_the_second_object_means_nothing_is_written(String engine) {
        String example = Shell.run("", "example", engine).out();
        Shell.Result result = Shell.run(example + "\n{\"nonsense\": 1}", "reckon", engine);
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("#2/nonsense: unknown field").doesNotContain("Exception");
    }

    @ParameterizedTest
    @MethodSource("jsonEngines")
    void rubbish_is_refused_with_a_sentence(String engine) {
        for (String input : List.of("", "[]", "[{}]", "{", "{\"a\":1,\"a\":1}", "{\"a\":NaN}", "null", "{}")) {
            Shell.Result result = Shell.run(input, "reckon", engine);
            assertThat(result.code()).as(input).isEqualTo(2);
            assertThat(result.out()).as(input).isEmpty();
            assertThat(result.err())
                    .as(input)
                    .isNotBlank()
                    .doesNotContain("Exception")
                    .contains("; right would be ");
        }
    }

    @ParameterizedTest
    @MethodSource("jsonEngines")
    void several_objects_give_a_line_each_in_order(String engine) {
        String example = Shell.run("", "example", engine).out();
        Shell.Result once = Shell.run(example, "reckon", engine);
        Shell.Result thrice = Shell.run(example + example + " " + example, "reckon", engine);
        assertThat(thrice.out()).isEqualTo(once.out().repeat(3));
    }

    @Test
    void faults_are_json_lines_with_json() {
        Shell.Result result = Shell.run("[]", "reckon", "leak", "--json");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err().lines()).allMatch(line -> line.startsWith("{\"pointer\":"));
    }

    @Test
    void an_unknown_engine_is_told_with_the_known_ones() {
        Shell.Result result = Shell.run("{}", "reckon", "wind");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("no engine \"wind\"").contains("one of ");
    }

    @Test
    void a_file_that_is_not_there_is_told_by_name() {
        Shell.Result result = Shell.run("", "reckon", "leak", "no-such-file.json");
        assertThat(result.code()).isEqualTo(2);
        assertThat(result.err()).contains("no-such-file.json");
    }

    @Test
    void a_list_at_the_top_is_told_as_a_list() {
        assertThat(Shell.run("[]", "reckon", "leak").err()).contains("at the top stands a list");
    }

    @Test
    void a_port_that_cannot_be_is_refused_before_anything_starts() {
        for (String port : List.of("-1", "65536", "99999")) {
            Shell.Result result = Shell.run("", "serve", "--port=" + port);
            assertThat(result.code()).as(port).isEqualTo(2);
            assertThat(result.err()).contains(port + " is no port");
        }
    }
}
