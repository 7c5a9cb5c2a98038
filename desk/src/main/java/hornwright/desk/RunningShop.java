package hornwright.desk;

import hornwright.desk.cli.Pages;
import hornwright.desk.journal.Unusable;
import hornwright.desk.message.Messages;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import hornwright.desk.web.PortTaken;
import hornwright.desk.web.Site;
import hornwright.desk.web.WebServer;
import java.time.Clock;
import org.jspecify.annotations.Nullable;

/** The shop and its pages, opened together: the one place where commands and pages meet. */
final class RunningShop implements Pages.Running {
    private static final String LANGUAGE = "HORNWRIGHT_LANGUAGE";

    private final Shop shop;
    private final WebServer server;

    private RunningShop(Shop shop, WebServer server) {
        this.shop = shop;
        this.server = server;
    }

    static RunningShop start(Pages.Request request) throws Pages.CannotServe {
        Messages texts = texts(System.getenv(LANGUAGE));
        Shop shop = open(request);
        try {
            WebServer server = WebServer.start(new Site(shop, texts), request.port());
            shop.tellAddress(server.address());
            return new RunningShop(shop, server);
        } catch (PortTaken taken) {
            shop.close();
            throw new Pages.CannotServe(String.valueOf(taken.getMessage()));
        }
    }

    private static Messages texts(@Nullable String language) throws Pages.CannotServe {
        if (language == null || language.isBlank()) {
            return Messages.english();
        }
        return Messages.in(language)
                .orElseThrow(() -> new Pages.CannotServe(
                        "%s is \"%s\", but there are no texts of that language; en is there, and pseudo for trying out."
                                .formatted(LANGUAGE, language)));
    }

    private static Shop open(Pages.Request request) throws Pages.CannotServe {
        String database = request.database();
        OpenShop.Where where =
                database == null ? new OpenShop.Where.Folder(request.folder()) : new OpenShop.Where.Server(database);
        OpenShop.FirstRun firstRun = switch (request.filling()) {
            case DEMO_WHEN_NEW -> OpenShop.FirstRun.DEMO;
            case DEMO -> OpenShop.FirstRun.DEMO_UNTIL_A_JOB;
            case EMPTY -> OpenShop.FirstRun.EMPTY;
        };
        try {
            return OpenShop.open(where, firstRun, Clock.systemUTC());
        } catch (Unusable unusable) {
            throw new Pages.CannotServe(String.valueOf(unusable.getMessage()));
        }
    }

    @Override
    public String address() {
        return server.address();
    }

    @Override
    public void close() {
        server.close();
        shop.close();
    }
}
