package hornwright.desk;

import hornwright.desk.cli.Pages;
import hornwright.desk.journal.Unusable;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import hornwright.desk.web.PortTaken;
import hornwright.desk.web.Site;
import hornwright.desk.web.WebServer;
import java.time.Clock;

/** The shop and its pages, opened together: the one place where commands and pages meet. */
final class RunningShop implements Pages.Running {
    private final Shop shop;
    private final WebServer server;

    private RunningShop(Shop shop, WebServer server) {
        this.shop = shop;
        this.server = server;
    }

    static RunningShop start(Pages.Request request) throws Pages.CannotServe {
        Shop shop = open(request);
        try {
            WebServer server = WebServer.start(new Site(shop), request.port());
            shop.tellAddress(server.address());
            return new RunningShop(shop, server);
        } catch (PortTaken taken) {
            shop.close();
            throw new Pages.CannotServe(String.valueOf(taken.getMessage()));
        }
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
