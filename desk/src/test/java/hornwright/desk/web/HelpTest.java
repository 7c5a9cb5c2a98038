package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.house.Checkout;
import hornwright.desk.message.Messages;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import hornwright.desk.web.page.Helps;
import hornwright.desk.web.view.Help;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Help stands one tap away on every page, and says what the guide says. */
final class HelpTest {
    /** A row of the guide: name, address, question. */
    private static final Pattern ROW = Pattern.compile("(?m)^\\| [^|]+ \\| `(/[^`]*)` \\| ([^|]+) \\|$");

    private static final Messages TEXTS = Messages.english();

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Shop shop;
    private static WebServer server;
    private static Wire wire;

    @BeforeAll
    static void start() throws Exception {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
        server = WebServer.start(new Site(shop), 0);
        wire = new Wire(server.address());
    }

    @AfterAll
    static void stop() {
        server.close();
        shop.close();
    }

    @Test
    void every_page_of_the_guide_has_its_own_help_with_the_same_question() {
        Map<String, String> questions = questions();
        assertThat(questions).hasSizeGreaterThan(40);
        questions.forEach((address, question) -> assertThat(Helps.named(Helps.name(address), TEXTS))
                .as(address)
                .hasValueSatisfying(help -> assertThat(help.question()).isEqualTo(question)));
    }

    @Test
    void every_help_belongs_to_a_page_of_the_guide() {
        List<String> names = questions().keySet().stream().map(Helps::name).toList();
        assertThat(TEXTS.file("help").keySet().stream()
                        .filter(key -> key.endsWith(".question"))
                        .map(key -> key.substring("help.".length(), key.length() - ".question".length()))
                        .filter(name -> !name.equals("any")))
                .containsExactlyInAnyOrderElementsOf(names);
    }

    @Test
    void help_is_no_manual() {
        for (String address : questions().keySet()) {
            Help help = Helps.named(Helps.name(address), TEXTS).orElseThrow();
            assertThat(help.wrong()).as(address).hasSizeBetween(1, 3);
            assertThat(List.of(help.question(), help.needs(), help.decides()))
                    .as(address)
                    .allMatch(line -> line.length() < 120);
            assertThat(help.wrong()).as(address).allMatch(line -> line.length() < 160);
        }
    }

    @Test
    void it_opens_without_scripts_by_a_link_at_the_head_of_the_page() throws IOException {
        String horn = wire.post("/horns", "pattern=tarrant-loe-alto").header("Location");
        for (String path : List.of("/", "/rules", horn + "/measure", horn + "/lever/e", "/nowhere")) {
            assertThat(wire.get(path).body())
                    .as(path)
                    .contains("<a href=\"#help\">Help</a>")
                    .contains("<section class=\"aid\" id=\"help\"");
        }
        assertThat(wire.get(horn + "/neck").body()).contains("The tenon expanded while it is out of round");
    }

    private static Map<String, String> questions() {
        String guide = Checkout.text(Checkout.root().resolve("docs/guide/pages.md"));
        return ROW.matcher(guide)
                .results()
                .collect(Collectors.toMap(
                        row -> row.group(1), row -> row.group(2).strip()));
    }
}
