package hornwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a first visit carries, packed by gzip: a page with its style, without photographs, and all scripts of it. */
final class WeightTest {
    private static final int PAGE = 60 * 1024;
    private static final int SCRIPTS = 30 * 1024;
    private static final Pattern SCRIPT = Pattern.compile("<script [^>]*src=\"([^\"]+)\"");
    private static final Pattern STYLE = Pattern.compile("<link rel=\"stylesheet\" href=\"([^\"]+)\"");

    @Test
    void no_page_is_heavier_than_sixty_kibibytes_nor_its_scripts_than_thirty(@TempDir Path folder) throws Exception {
        Shown shown = Shown.in(folder);
        Map<String, String> heavy = new TreeMap<>();
        try (HttpClient client = HttpClient.newHttpClient()) {
            for (Shown.PageOf one : shown.pages()) {
                String html = new String(got(client, shown, one.path()), StandardCharsets.UTF_8);
                int scripts = 0;
                for (String script : named(SCRIPT, html)) {
                    scripts += packed(got(client, shown, script));
                }
                int page = packed(html.getBytes(StandardCharsets.UTF_8));
                for (String style : named(STYLE, html)) {
                    page += packed(got(client, shown, style));
                }
                if (page > PAGE || scripts > SCRIPTS) {
                    heavy.put(one.name(), "%d, scripts %d".formatted(page, scripts));
                }
            }
        } finally {
            shown.program().close();
        }
        assertThat(heavy).isEmpty();
    }

    private static List<String> named(Pattern pattern, String html) {
        return pattern.matcher(html)
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
    }

    private static byte[] got(HttpClient client, Shown shown, String path) throws IOException, InterruptedException {
        URI address = URI.create(shown.program().address() + path);
        return client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    private static int packed(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write(bytes);
        }
        return packed.size();
    }
}
