package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No template may hold what the content security policy would block, nor write raw text it did not draw itself. */
final class TemplatePolicyTest {
    private static final Path FOLDER = Path.of("src/main/jte");
    private static final List<Pattern> FORBIDDEN = List.of(
            Pattern.compile("<[^>]*\\sstyle\\s*=", Pattern.CASE_INSENSITIVE),
            Pattern.compile("<[^>]*\\son[a-z]+\\s*=", Pattern.CASE_INSENSITIVE),
            Pattern.compile("<[^>]*\\shx-on", Pattern.CASE_INSENSITIVE),
            Pattern.compile("<style\\b", Pattern.CASE_INSENSITIVE),
            Pattern.compile("<script(?![^>]*\\ssrc=)", Pattern.CASE_INSENSITIVE),
            Pattern.compile("javascript:", Pattern.CASE_INSENSITIVE));
    /**
     * The drawing is made by this program from keywork, whose words are escaped there; a piece was rendered by another of
     * these templates.
     */
    private static final List<String> MAY_BE_RAW = List.of("drawing.jte", "piece.jte");

    @Test
    void no_template_holds_inline_style_or_script() throws IOException {
        for (Path template : templates()) {
            String text = Files.readString(template);
            assertThat(FORBIDDEN.stream()
                            .filter(pattern -> pattern.matcher(text).find())
                            .toList())
                    .as(template.toString())
                    .isEmpty();
        }
    }

    @Test
    void only_the_drawing_and_rendered_pieces_are_written_unescaped() throws IOException {
        for (Path template : templates()) {
            if (Files.readString(template).contains("$unsafe")) {
                assertThat(template.getFileName().toString()).isIn(MAY_BE_RAW);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p style=\"color:red\">",
                "<a href=x onclick=y>",
                "<style>",
                "<script>",
                "<a href=\"javascript:x\">",
                "<b hx-on:click=x>"
            })
    void the_policy_sees_each_forbidden_thing(String html) {
        assertThat(FORBIDDEN).anyMatch(pattern -> pattern.matcher(html).find());
    }

    private static List<Path> templates() throws IOException {
        // Sheets of paper lie a folder deeper; no browser ever sees them.
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".jte")).toList();
        }
    }
}
