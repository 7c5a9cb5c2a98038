package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the server refuses and what every answer carries. Source: OWASP ASVS 5.0.0, chapters 3 and 4. */
final class WebServerTest {
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

    @ParameterizedTest
    @ValueSource(
            strings = {"evil.example", "127.0.0.1", "127.0.0.1:1", "localhost.evil.example:80", "[::1]:80", "0.0.0.0:80"
            })
    void a_request_under_another_name_is_refused(String host) throws IOException {
        Wire.Answer answer = wire.get("/favicon.ico", "Host: " + host);
        assertThat(answer.status()).isEqualTo(421);
        assertThat(answer.body()).contains("This program answers only at " + server.address());
    }

    @Test
    void its_two_names_are_answered() throws IOException {
        int port = URI.create(server.address()).getPort();
        assertThat(wire.get("/favicon.ico", "Host: localhost:" + port).status()).isEqualTo(200);
        assertThat(wire.get("/favicon.ico", "Host: 127.0.0.1:" + port).status()).isEqualTo(200);
    }

    @Test
    void a_form_posted_from_elsewhere_changes_nothing() throws IOException {
        for (List<String> headers : List.of(
                List.<String>of(),
                List.of("Sec-Fetch-Site: cross-site"),
                List.of("Sec-Fetch-Site: same-site"),
                List.of("Sec-Fetch-Site: none"),
                List.of("Origin: null"),
                List.of("Origin: http://evil.example"),
                List.of("Sec-Fetch-Site: same-origin", "Origin: http://evil.example"))) {
            Wire.Answer answer = wire.say("POST", "/theme", "theme=dark", headers.toArray(String[]::new));
            assertThat(answer.status()).as(headers.toString()).isEqualTo(403);
            assertThat(answer.header("Set-Cookie")).isEmpty();
        }
    }

    @Test
    void a_form_of_its_own_is_taken_and_leads_back_to_its_page() throws IOException {
        Wire.Answer answer = wire.post("/theme", "theme=dark&back=%2Frules");
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.header("Location")).isEqualTo("/rules");
        assertThat(answer.header("Set-Cookie")).contains("hornwright-theme=dark", "HttpOnly", "SameSite=Strict");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"https:%2F%2Fevil.example", "%2F%2Fevil.example", "%2F%5Cevil.example", "javascript:alert(1)", ""
            })
    void a_form_never_leads_to_another_site(String back) throws IOException {
        assertThat(wire.post("/theme", "theme=dark&back=" + back).header("Location"))
                .isEqualTo("/");
    }

    @Test
    void a_form_of_more_than_64_kilobytes_is_refused() throws IOException {
        assertThat(wire.post("/theme", "theme=" + "x".repeat(65_536)).status()).isEqualTo(413);
    }

    @Test
    void methods_that_no_page_uses_are_refused() throws IOException {
        for (String method : List.of("TRACE", "PUT", "DELETE", "PATCH", "OPTIONS")) {
            assertThat(wire.say(method, "/", "").status()).as(method).isEqualTo(405);
        }
    }

    @Test
    void every_answer_carries_the_policy_even_a_refusal() throws IOException {
        for (Wire.Answer answer : List.of(
                wire.get("/no-such-page"), wire.get("/favicon.ico"), wire.get("/favicon.ico", "Host: evil.example"))) {
            assertThat(answer.header("Content-Security-Policy"))
                    .contains("default-src 'none'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(answer.header("Server")).isEmpty();
        }
    }

    @Test
    void pages_are_never_kept_and_assets_for_ever() throws IOException {
        Wire.Answer page = wire.get("/no-such-page");
        assertThat(page.header("Cache-Control")).isEqualTo("no-store");
        String style = page.body().replaceAll("(?s).*href=\"(/assets/hornwright\\.[0-9a-f]+\\.css)\".*", "$1");
        Wire.Answer asset = wire.get(style);
        assertThat(asset.status()).isEqualTo(200);
        assertThat(asset.header("Cache-Control")).contains("immutable");
        assertThat(wire.get(style, "If-None-Match: " + asset.header("ETag")).status())
                .isEqualTo(304);
        assertThat(wire.get(style, "Accept-Encoding: gzip").header("Content-Encoding"))
                .isEqualTo("gzip");
        assertThat(wire.get(style.replaceAll("[0-9a-f]{16}", "0123456789abcdef"))
                        .status())
                .isEqualTo(404);
    }

    @Test
    void a_port_that_is_taken_is_said_in_a_sentence() {
        int port = URI.create(server.address()).getPort();
        assertThatThrownBy(() -> WebServer.start(new Site(shop), port))
                .isInstanceOf(PortTaken.class)
                .hasMessageContaining("Port " + port + " is taken by another program");
    }
}
