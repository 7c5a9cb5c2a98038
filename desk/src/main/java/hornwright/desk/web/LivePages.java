package hornwright.desk.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.sse.SseClient;
import java.time.Duration;
import java.util.Objects;

/**
 * Tells an open page that its horn has changed, by server-sent events (HTML Living Standard, chapter 9.2): one line with
 * how far the edits have come. The page then asks for itself again as anybody would.
 */
final class LivePages {
    /** So often a silent line says that it is still there, and a page that has gone is noticed. */
    private static final Duration BREATH = Duration.ofSeconds(15);

    private final Desk desk;

    LivePages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
        routes.sse("/horn/{id}/live", this::tell);
    }

    private void tell(SseClient client) {
        String id = client.ctx().pathParam("id");
        long seen = desk.bench(id).history().seq();
        String asked = Objects.requireNonNullElse(client.ctx().queryParam("seq"), "");
        long known = asked.matches("\\d{1,15}") ? Math.min(Long.parseLong(asked), seen) : seen;
        try {
            while (!client.terminated()) {
                long now = desk.shop().awaitBeyond(id, known, BREATH);
                if (now > known) {
                    client.sendEvent("edit", Long.toString(now));
                } else {
                    client.sendComment("still here");
                }
                known = now;
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
