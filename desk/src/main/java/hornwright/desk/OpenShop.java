package hornwright.desk;

import hornwright.desk.cli.Pages;
import hornwright.desk.journal.DataFolder;
import hornwright.desk.journal.ShopData;
import hornwright.desk.journal.Unusable;
import hornwright.desk.web.PortTaken;
import hornwright.desk.web.Site;
import hornwright.desk.web.WebServer;
import java.time.Clock;

/** The shop's data and its pages, opened together. */
final class OpenShop implements Pages.Running {
    private final ShopData data;
    private final WebServer server;

    private OpenShop(ShopData data, WebServer server) {
        this.data = data;
        this.server = server;
    }

    static OpenShop start(Pages.Request request) throws Pages.CannotServe {
        ShopData data = open(request);
        try {
            WebServer server = WebServer.start(new Site(), request.port());
            if (data.folder() != null) {
                data.folder().tellAddress(server.address());
            }
            return new OpenShop(data, server);
        } catch (PortTaken taken) {
            data.close();
            throw new Pages.CannotServe(String.valueOf(taken.getMessage()));
        }
    }

    private static ShopData open(Pages.Request request) throws Pages.CannotServe {
        Clock clock = Clock.systemUTC();
        try {
            return request.database() == null
                    ? ShopData.open(DataFolder.take(request.folder()), clock)
                    : ShopData.open(request.database(), clock);
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
        data.close();
    }
}
