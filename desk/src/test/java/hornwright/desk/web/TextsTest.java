package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.house.Checkout;
import hornwright.desk.message.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every word a template shows stands in a file of texts, and every text there is shown. Sheets of paper are not pages. */
final class TextsTest {
    private static final Path TEMPLATES = Checkout.root().resolve("desk/src/main/jte");
    private static final Path TEXTS = Checkout.root().resolve("desk/src/main/resources/hornwright/messages/en");
    private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*\"([^\"]+)\"");

    /** Their keys are put together by the address of a page or the number of a stop. */
    private static final Set<String> PUT_TOGETHER = Set.of("help", "tour");

    @Test
    void no_template_shows_a_word_without_its_key() throws IOException {
        Map<String, List<String>> bare = new TreeMap<>();
        for (Path template : templates()) {
            List<String> found = TemplateText.bare(Files.readString(template));
            if (!found.isEmpty()) {
                bare.put(String.valueOf(template.getFileName()), found);
            }
        }
        assertThat(bare).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p>Nothing yet</p>",
                "<p>${a.b()} mm</p>",
                "@if(a.b())Yes@endif",
                "<input aria-label=\"Count of ${a.b()}\">",
                "<button>${a.on() ? \"Stop\" : say(\"x.start\")}</button>",
                "@template.frame(frame = a.frame(), content = @`<h1>Here</h1>`)",
                "@template.choice(label = \"The horn is for\")"
            })
    void a_bare_word_is_seen(String template) {
        assertThat(TemplateText.bare(template)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<p>${say(\"a.nothing-yet\")} · &nbsp;–</p>",
                "<a href=\"/plan\" aria-current=\"${a.on() ? \"page\" : null}\">${a.name()}</a>",
                "@for(var one : a.all())<li class=\"${one.on() ? \"on\" : \"\"}\">${one}</li>@endfor",
                "<input aria-label=\"${say(\"a.count\", a.b())}\">"
            })
    void what_is_no_word_of_a_page_is_left_alone(String template) {
        assertThat(TemplateText.bare(template)).isEmpty();
    }

    @Test
    void every_key_that_is_said_has_its_text() throws IOException {
        Messages texts = Messages.english();
        assertThat(said())
                .hasSizeGreaterThan(20)
                .allSatisfy(key -> assertThat(texts.find(key)).as(key).isPresent());
    }

    @Test
    void every_text_is_said_somewhere() throws IOException {
        Set<String> said = said();
        for (Path file : Checkout.files(TEXTS, ".properties")) {
            String room = String.valueOf(file.getFileName()).replace(".properties", "");
            if (!PUT_TOGETHER.contains(room)) {
                assertThat(said)
                        .as(room)
                        .containsAll(Messages.english().file(room).keySet());
            }
        }
    }

    @Test
    void no_key_stands_twice_in_its_file() {
        for (Path file : Checkout.files(TEXTS, ".properties")) {
            List<String> keys = Arrays.stream(Checkout.text(file).split("\n"))
                    .filter(line -> line.contains("=") && !line.startsWith("#"))
                    .map(line -> line.substring(0, line.indexOf('=')))
                    .toList();
            assertThat(keys).as(file.toString()).doesNotHaveDuplicates();
        }
    }

    private static Set<String> said() throws IOException {
        Set<String> said = new HashSet<>();
        for (Path template : templates()) {
            said.addAll(keys(Files.readString(template)));
        }
        Checkout.javaFiles("main").stream()
                .map(Checkout::text)
                .filter(code -> code.contains("hornwright.desk.message"))
                .forEach(code -> said.addAll(keys(code)));
        return said;
    }

    private static Set<String> keys(String text) {
        return SAID.matcher(text)
                .results()
                .map(found -> found.group(1))
                .filter(key -> !key.endsWith("."))
                .collect(Collectors.toSet());
    }

    private static List<Path> templates() throws IOException {
        try (Stream<Path> files = Files.list(TEMPLATES)) {
            return files.filter(file -> file.toString().endsWith(".jte")).toList();
        }
    }
}
