package hornwright.desk.web;

import hornwright.desk.journal.Unusable;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Theme;
import hornwright.desk.web.page.TourStops;
import hornwright.desk.web.page.Uploads;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.BindException;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;

/** Answers on 127.0.0.1 only: checks each request, then hands it to the page it asks for. */
public final class WebServer implements AutoCloseable {
    /** Held here because a logger nobody holds forgets its level. */
    private static final List<Logger> LIBRARIES =
            List.of(Logger.getLogger("io.javalin"), Logger.getLogger("org.eclipse.jetty"));

    private static final Logger LOG = Logger.getLogger(WebServer.class.getName());

    private final Javalin server;

    private WebServer(Javalin server) {
        this.server = server;
    }

    /** Starts on that port, or on a free one for 0. */
    public static WebServer start(Site site, int port) throws PortTaken {
        LIBRARIES.forEach(logger -> logger.setLevel(Level.OFF));
        Javalin javalin = Javalin.create(config -> configure(config, site, port));
        try {
            return new WebServer(javalin.start());
        } catch (RuntimeException e) {
            javalin.stop();
            if (isBusy(e)) {
                throw new PortTaken(port);
            }
            throw e;
        }
    }

    public String address() {
        return "http://127.0.0.1:" + server.port();
    }

    /** Every address that is answered, as it is declared: {@code /horn/{id}/plan}. */
    public List<String> addresses() {
        return server.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint.path)
                .filter(path -> path.startsWith("/"))
                .distinct()
                .sorted()
                .toList();
    }

    @Override
    public void close() {
        server.stop();
    }

    private static void configure(JavalinConfig config, Site site, int port) {
        config.startup.showJavalinBanner = false;
        config.startup.startupWatcherEnabled = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.concurrency.useVirtualThreads = true;
        config.jetty.host = "127.0.0.1";
        config.jetty.port = port;
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.http.maxRequestSize = Uploads.LARGEST_FORM;
        Uploads.limit(config.jetty.multipartConfig);
        routes(config.routes, site);
    }

    private static void routes(RoutesConfig routes, Site site) {
        routes.before(Guard::check);
        routes.get("/assets/<file>", site.assets()::answer);
        routes.get("/favicon.ico", site.assets()::icon);
        routes.post("/theme", Theme::choose);
        routes.post("/tour", TourStops::choose);
        for (Consumer<RoutesConfig> pages : site.pages()) {
            pages.accept(routes);
        }
        routes.exception(Refusal.class, (refusal, context) -> site.refuse(context, refusal));
        routes.exception(Unusable.class, (unusable, context) -> site.refuse(context, unusable(unusable)));
        routes.exception(Exception.class, (failure, context) -> site.refuse(context, failed(context, failure)));
        routes.error(404, context -> unanswered(context, site));
    }

    /** A path no page claims; a page's own 404 has its sentence already. */
    private static void unanswered(Context context, Site site) {
        if (context.attribute(Site.ANSWERED) == null) {
            site.refuse(context, Refusal.notFound("There is no page at this address."));
        }
    }

    /** The data cannot be used just now or as it stands; its own sentence says which. */
    private static Refusal unusable(Unusable unusable) {
        return new Refusal(503, String.valueOf(unusable.getMessage()));
    }

    private static Refusal failed(Context context, Exception failure) {
        LOG.log(Level.SEVERE, failure, () -> context.req().getMethod() + " " + context.path());
        return new Refusal(
                500, "The program failed on this page. Nothing of it was saved; the terminal it runs in says where.");
    }

    private static boolean isBusy(@Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException) {
                return true;
            }
        }
        return false;
    }
}
