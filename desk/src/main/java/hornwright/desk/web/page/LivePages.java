package hornwright.desk.web.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.sse.SseClient;
import java.time.Duration;
import java.util.Objects;

/**
 * Tells an open page that something it rests on has changed, by server-sent events (HTML Living Standard, chapter 9.2): one
 * line with how far the edits have come. The page then asks for itself again as anybody would. A page of a horn rests on
 * that horn, the rules, the stock and the archive; a page of the shop on everything.
 */
public final class LivePages {
    /** So often a silent line says that it is still there, and a page that has gone is noticed. */
    private static final Duration BREATH = Duration.ofSeconds(15);

    private final Desk desk;

    public LivePages(Desk desk) {
        this.desk = desk;
    }

    /** Waits until the edits have come beyond some point, and gives how far they have come. */
    private interface Awaiting {
        long beyond(long come) throws InterruptedException;
    }

    public void routes(RoutesConfig routes) {
        routes.sse(
                "/live",
                client -> tell(client, desk.shop().come(), come -> desk.shop().awaitBeyond(come, BREATH)));
        routes.sse("/horn/{id}/live", this::tellOfHorn);
    }

    /** Where a page that was asked for listens; a page that answers a form could not ask for itself again. */
    static String address(Context context, String path, long come) {
        return context.req().getMethod().equals("GET") ? path + "?at=" + come : "";
    }

    private void tellOfHorn(SseClient client) {
        String id = desk.bench(client.ctx().pathParam("id")).id();
        tell(client, desk.shop().come(id), come -> desk.shop().awaitBeyond(id, come, BREATH));
    }

    private static void tell(SseClient client, long come, Awaiting awaiting) {
        String asked = Objects.requireNonNullElse(client.ctx().queryParam("at"), "");
        long known = asked.matches("\\d{1,15}") ? Math.min(Long.parseLong(asked), come) : come;
        try {
            while (!client.terminated()) {
                long now = awaiting.beyond(known);
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
