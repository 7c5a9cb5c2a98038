package hornwright.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.PlaceKind;
import hornwright.desk.cli.Hornwright;
import hornwright.desk.cli.Streams;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.desk.reckon.Engine;
import hornwright.desk.reckon.Engines;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import hornwright.desk.web.Site;
import hornwright.desk.web.WebServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Walks what the program can do and fails when the docs do not speak of it. */
final class DocumentedTest {
    private static final Path DOCS = Checkout.root().resolve("docs");

    @Test
    void every_command_and_option_stands_in_the_guide() {
        String page = Checkout.text(DOCS.resolve("guide/commands.md"));
        for (Map.Entry<String, CommandLine> verb :
                Hornwright.commandLine(Streams.system()).getSubcommands().entrySet()) {
            assertThat(page).contains("hornwright " + verb.getKey());
            for (OptionSpec option : verb.getValue().getCommandSpec().options()) {
                assertThat(page).as(verb.getKey()).contains(option.longestName());
            }
        }
    }

    @Test
    void every_setting_stands_in_the_guide() {
        String page = Checkout.text(DOCS.resolve("guide/commands.md"));
        Pattern setting = Pattern.compile("HORNWRIGHT_[A-Z_]+");
        Path root = Checkout.root();
        Stream<Path> scripts = Stream.concat(
                Stream.of(root.resolve("hornwright"), root.resolve("test")),
                Checkout.files(root.resolve("scripts"), ".sh").stream());
        Stream<Path> sources = Stream.concat(
                Checkout.javaFiles("main").stream(), Checkout.files(root.resolve("browser/src"), ".java").stream());
        List<String> settings = Stream.concat(scripts, sources)
                .flatMap(file -> setting.matcher(Checkout.text(file)).results())
                .map(MatchResult::group)
                .distinct()
                .toList();
        assertThat(settings).hasSizeGreaterThan(2);
        assertThat(page).contains(settings);
    }

    @Test
    void every_engine_has_a_page_of_its_method() {
        for (Engine engine : Engines.all()) {
            Path page = DOCS.resolve("method").resolve(engine.name() + ".md");
            assertThat(Files.exists(page)).as(page.toString()).isTrue();
            assertThat(Checkout.text(page))
                    .as(page.toString())
                    .containsIgnoringCase("source")
                    .containsIgnoringCase("valid");
            assertThat(Checkout.text(DOCS.resolve("guide/reckon.md"))).contains("`" + engine.name() + "`");
        }
    }

    @Test
    void every_method_page_belongs_to_an_engine_or_a_chapter_of_the_plan() {
        assertThat(Checkout.files(DOCS.resolve("method"), ".md"))
                .isNotEmpty()
                .allSatisfy(page -> assertThat(
                                Checkout.text(page).lines().limit(3).toList().toString())
                        .startsWith("[# "));
    }

    @Test
    void every_kind_of_place_stands_in_the_guide() {
        String page = Checkout.text(DOCS.resolve("guide/places.md"));
        assertThat(PlaceKind.values()).allSatisfy(kind -> assertThat(page).contains("| `" + kind.word() + "` |"));
    }

    @Test
    void every_list_and_every_check_of_a_keywork_file_stands_in_the_guide() {
        String page = Checkout.text(DOCS.resolve("guide/keywork.md"));
        for (String list : List.of(
                "switches",
                "tube",
                "holes",
                "cups",
                "keys",
                "links",
                "rods",
                "places",
                "sets",
                "holds",
                "linkedSets",
                "octaveStates",
                "lowTable",
                "fingerings")) {
            assertThat(page).contains("`" + list + "`");
        }
        assertThat(LinkKind.values()).allSatisfy(kind -> assertThat(page).contains("`" + kind.word() + "`"));
        assertThat(KeyworkFile.SHIPPED).allSatisfy(name -> assertThat(page).contains("`" + name + "`"));
    }

    @Test
    void every_example_is_listed_and_every_listed_example_exists() {
        Path folder = Checkout.root().resolve("desk/src/main/resources/hornwright/examples");
        List<String> listed = Checkout.text(folder.resolve("index.txt"))
                .lines()
                .filter(line -> !line.isBlank())
                .toList();
        List<String> there = Checkout.files(folder, ".json").stream()
                .map(file -> file.getFileName().toString().replace(".json", ""))
                .toList();
        assertThat(listed).containsExactlyInAnyOrderElementsOf(there);
    }

    @Test
    void the_pages_at_the_root_are_there() {
        assertThat(Stream.of(
                        "README.md",
                        "CONTRIBUTING.md",
                        "CHANGELOG.md",
                        "SECURITY.md",
                        "LICENSE",
                        "NOTICE",
                        "docs/architecture.md"))
                .allMatch(name -> Files.exists(Checkout.root().resolve(name)));
    }

    @Test
    void every_page_and_every_form_stands_in_the_guide(@TempDir Path folder) throws Exception {
        String page = Checkout.text(DOCS.resolve("guide/pages.md"));
        try (Shop shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
                WebServer server = WebServer.start(new Site(shop), 0)) {
            assertThat(server.addresses()).hasSizeGreaterThan(15);
            for (String address : server.addresses()) {
                assertThat(page).as(address).contains("`" + address.replace("<file>", "…") + "`");
            }
        }
    }
}
