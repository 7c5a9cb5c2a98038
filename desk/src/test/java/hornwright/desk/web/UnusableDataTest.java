package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.journal.Place;
import hornwright.desk.journal.Tamper;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job a newer program has written to is not shown by half, and no page fails over it. */
final class UnusableDataTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Test
    void a_job_from_a_newer_program_is_refused_with_its_reason_and_the_others_are_shown() throws Exception {
        OpenShop.Where where = new OpenShop.Where.Folder(folder);
        OpenShop.open(where, OpenShop.FirstRun.DEMO, Place.CLOCK).close();
        Tamper.append(folder, "job.q-0001", "horn-polished", 1, "{\"shine\":3}");
        try (Shop shop = OpenShop.open(where, OpenShop.FirstRun.DEMO, Place.CLOCK)) {
            WebServer server = WebServer.start(new Site(shop), 0);
            try {
                Wire wire = new Wire(server.address());
                Wire.Answer refused = wire.get("/horn/q-0001/survey");
                assertThat(refused.status()).isEqualTo(503);
                assertThat(refused.body()).contains("was written by a newer program");
                assertThat(wire.get("/horn/q-0002/survey").status()).isEqualTo(200);
                assertThat(wire.get("/").status()).isIn(200, 503);
            } finally {
                server.close();
            }
        }
    }
}
