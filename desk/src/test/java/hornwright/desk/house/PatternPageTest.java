package hornwright.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.drawing.Stuff;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of patterns knows every shape, word, colour and pattern there is, and names none that is gone. */
final class PatternPageTest {
    private static final Path ROOT = Checkout.root();
    private static final String PAGE = Checkout.text(ROOT.resolve("docs/guide/patterns.md"));
    private static final Path TEMPLATES = ROOT.resolve("desk/src/main/jte");
    private static final Path STYLES = ROOT.resolve("desk/src/main/resources/hornwright/web");

    @Test
    void every_way_to_press_stands_on_the_page() {
        Pattern pressed = Pattern.compile("<(?:button|a)\\b[^>]*? class=\"([^\"$]+)\"");
        List<String> classes = templates()
                .flatMap(text -> pressed.matcher(text).results())
                .flatMap(found -> Stream.of(found.group(1).split(" ")))
                .filter(name -> !List.of("num", "small").contains(name))
                .distinct()
                .toList();
        assertThat(classes).hasSizeGreaterThan(6).allMatch(name -> PAGE.contains("`." + name + "`"));
    }

    @Test
    void every_class_the_page_names_is_in_the_style_sheets() {
        String styles = String.join(
                "\n",
                Checkout.files(STYLES, ".css").stream().map(Checkout::text).toList());
        assertThat(found("`\\.([a-z-]+)`", PAGE))
                .hasSizeGreaterThan(20)
                .allSatisfy(name -> assertThat(styles).as(name).containsPattern("\\." + name + "\\b"));
    }

    @Test
    void every_word_a_state_may_carry_stands_on_the_page() {
        Stream<String> code = Checkout.javaFiles("main").stream().map(Checkout::text);
        List<String> words = code.flatMap(text -> Pattern.compile("new State\\(\\s*\"([a-z]+)\", \"([^\"]+)\"")
                        .matcher(text)
                        .results())
                .filter(state -> !List.of("found", "as-built").contains(state.group(1)))
                .map(state ->
                        row(state.group(1)).contains(state.group(2)) ? "" : state.group(1) + ": " + state.group(2))
                .filter(missing -> !missing.isEmpty())
                .distinct()
                .toList();
        assertThat(words).isEmpty();
    }

    @Test
    void every_icon_is_one_of_the_states() {
        assertThat(found("id=\"i-([a-z]+)\"", Checkout.text(TEMPLATES.resolve("icons.jte"))))
                .hasSize(5)
                .allMatch(icon -> !row(icon).isEmpty());
    }

    @Test
    void every_colour_stands_on_the_page_and_none_that_is_gone() {
        List<String> colours = found("(--[a-z0-9-]+): (?:#|rgb)", Checkout.text(STYLES.resolve("tokens.css")));
        List<String> named = found("`(--[a-z0-9-]+)`", PAGE);
        assertThat(named).containsExactlyInAnyOrderElementsOf(colours);
    }

    @Test
    void every_material_of_the_drawing_stands_on_the_page() {
        assertThat(Stuff.values())
                .allSatisfy(
                        stuff -> assertThat(PAGE).contains("`" + stuff.name().toLowerCase(Locale.ROOT) + "`"));
    }

    @Test
    void every_picture_is_there_and_every_picture_is_used() {
        List<String> used = found("\\.\\./pictures/patterns/([a-z-]+\\.png)", PAGE);
        assertThat(used)
                .hasSizeGreaterThan(25)
                .allSatisfy(name -> assertThat(picture(name)).exists());
        assertThat(Checkout.files(ROOT.resolve("docs/pictures/patterns"), ".png"))
                .allMatch(file -> used.contains(file.getFileName().toString()));
    }

    private static Path picture(String name) {
        return ROOT.resolve("docs/pictures/patterns").resolve(name);
    }

    /** The row of a state: what stands behind its name. */
    private static String row(String state) {
        return PAGE.lines()
                .filter(line -> line.contains("| `" + state + "`"))
                .findFirst()
                .orElse("");
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult one) -> one.group(1))
                .distinct()
                .toList();
    }

    private static Stream<String> templates() {
        return Checkout.files(TEMPLATES, ".jte").stream()
                .filter(file -> Files.exists(file) && !file.toString().contains("/paper/"))
                .map(Checkout::text);
    }
}
