package hornwright.desk.web;

import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A shop of its own for each test, served on a free port. */
@SuppressWarnings("NullAway.Init")
abstract class ServedShop {
    private final OpenShop.FirstRun firstRun;

    @TempDir
    Path folder;

    Shop shop;
    Wire wire;
    WebServer server;

    ServedShop(OpenShop.FirstRun firstRun) {
        this.firstRun = firstRun;
    }

    @BeforeEach
    void serve() throws PortTaken {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), firstRun, Clock.systemUTC());
        server = WebServer.start(new Site(shop), 0);
        wire = new Wire(server.address());
    }

    @AfterEach
    void close() {
        server.close();
        shop.close();
    }

    /** Puts the alto of most tests on the shelf and gives the path of its page. */
    String newAlto() throws IOException {
        return wire.post("/horns", "pattern=tarrant-loe-alto&serial=41207&use=WORKING")
                .header("Location");
    }
}
