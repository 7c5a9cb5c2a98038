package hornwright.desk.web;

import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Uploads;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets a request through only when it comes from a page of this server or from the person at this machine. A web page
 * elsewhere can make a browser call a local address; it cannot forge these headers. Source: OWASP ASVS 5.0.0, 3.5.1 to
 * 3.5.3 and 4.2.
 */
final class Guard {
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final Set<String> KNOWN = Set.of("GET", "HEAD", "POST");

    /** A browser that is still sending when the connection ends never shows the sentence, so this much is read away first. */
    private static final long READ_AWAY = 4L << 20;

    private Guard() {}

    static void check(Context context) throws IOException {
        Headers.on(context);
        String method = context.req().getMethod().toUpperCase(Locale.ROOT);
        if (!KNOWN.contains(method)) {
            throw new Refusal(405, "This address answers GET and POST, not %s.".formatted(method));
        }
        requireOwnName(context);
        if (!READING.contains(method)) {
            requireOwnPage(context);
            requireSmallBody(context);
        }
    }

    /** The port the socket is bound to, not the one the Host header claims. */
    private static void requireOwnName(Context context) {
        int port = context.req().getLocalPort();
        String host = context.header("Host");
        if (!("127.0.0.1:" + port).equals(host) && !("localhost:" + port).equals(host)) {
            throw new Refusal(421, "This program answers only at http://127.0.0.1:%d.".formatted(port));
        }
    }

    private static void requireOwnPage(Context context) {
        String site = context.header("Sec-Fetch-Site");
        String origin = context.header("Origin");
        boolean own = site == null ? origin != null : site.equals("same-origin");
        if (!own || (origin != null && !origin.equals("http://" + context.header("Host")))) {
            throw new Refusal(
                    403, "Changes are taken from this program's own pages only; open the page and try again.");
        }
    }

    private static void requireSmallBody(Context context) throws IOException {
        @Nullable String length = context.header("Content-Length");
        if (length == null) {
            throw new Refusal(411, "A form must say how long it is.");
        }
        Uploads.Limit limit = Uploads.limit(context);
        if (length.length() > 9 || Long.parseLong(length) > limit.bytes()) {
            context.req().getInputStream().skip(READ_AWAY);
            throw new Refusal(413, limit.sentence());
        }
    }
}
