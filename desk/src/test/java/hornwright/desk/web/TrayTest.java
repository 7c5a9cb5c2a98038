package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import hornwright.desk.web.page.Bay;
import hornwright.desk.web.page.Sheet;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tray stays small and leads to every page of a horn. */
final class TrayTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Shop shop;
    private static WebServer server;
    private static Wire wire;
    private static String horn;

    @BeforeAll
    static void start() throws Exception {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
        server = WebServer.start(new Site(shop), 0);
        wire = new Wire(server.address());
        horn = wire.post("/horns", "pattern=tarrant-loe-alto&serial=41207").header("Location");
    }

    @AfterAll
    static void stop() {
        server.close();
        shop.close();
    }

    @Test
    void every_sheet_of_the_tray_is_a_page_that_shows_itself_in_use() throws IOException {
        for (Sheet sheet : Sheet.values()) {
            String path = horn + (sheet.page().isEmpty() ? "" : "/" + sheet.page());
            Wire.Answer answer = wire.get(path);
            assertThat(answer.status()).as(path).isEqualTo(200);
            String opens = Sheet.in(sheet.bay()).getFirst().page();
            assertThat(answer.body())
                    .as(path)
                    .contains("<a href=\"%s%s\" aria-current=\"page\"><b>%s</b>"
                            .formatted(
                                    horn,
                                    opens.isEmpty() ? "" : "/" + opens,
                                    sheet.bay().title()));
        }
    }

    @Test
    void every_page_of_the_shop_is_one_of_its_compartments() throws IOException {
        for (String path : Stream.of("/", "/stock", "/rules").toList()) {
            assertThat(wire.get(path).body())
                    .as(path)
                    .contains("aria-label=\"The shop\"")
                    .contains("<a href=\"" + path + "\" aria-current=\"page\"><b>");
        }
    }

    /** Budgets of a first visit, as a browser on a slow line would load it: 60 KiB a page, 30 KiB of script in all. */
    @Test
    void a_page_weighs_at_most_60_kibibytes_and_all_script_30() throws IOException {
        String shelf = wire.get("/").body();
        int script = 0;
        for (String path : addresses(shelf, "src=\"(/assets/[^\"]+\\.js)\"")) {
            script += packed(wire.get(path).body());
        }
        int style = 0;
        for (String path : addresses(shelf, "href=\"(/assets/[^\"]+\\.css)\"")) {
            style += packed(wire.get(path).body());
        }
        assertThat(script).as("script").isBetween(1, 30 * 1024);
        for (Sheet sheet : Sheet.values()) {
            String path = horn + (sheet.page().isEmpty() ? "" : "/" + sheet.page());
            assertThat(packed(wire.get(path).body()) + style).as(path).isBetween(1, 60 * 1024);
        }
    }

    private static java.util.List<String> addresses(String page, String pattern) {
        return java.util.regex.Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map(result -> result.group(1))
                .toList();
    }

    private static int packed(String text) throws IOException {
        var bytes = new java.io.ByteArrayOutputStream();
        try (var zip = new java.util.zip.GZIPOutputStream(bytes)) {
            zip.write(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
        return bytes.size();
    }

    @Test
    void the_tray_has_room_for_eight_compartments_and_no_more() {
        assertThat(Bay.values()).hasSizeLessThanOrEqualTo(8);
    }
}
