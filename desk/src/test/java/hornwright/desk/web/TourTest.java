package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.message.Messages;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import hornwright.desk.web.page.TourStops;
import hornwright.desk.web.view.Tour;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Five stops that can be left and gone on with, and stand in nobody's way. */
final class TourTest {
    private static final Messages TEXTS = Messages.english();

    @Test
    void only_the_shelf_invites_and_only_until_it_is_answered() {
        assertThat(TourStops.at("null", "/", TEXTS).invited()).isTrue();
        assertThat(TourStops.at("null", "/rules", TEXTS).invited()).isFalse();
        assertThat(TourStops.at("-1", "/", TEXTS).invited()).isFalse();
        assertThat(TourStops.at("done", "/", TEXTS).invited()).isFalse();
    }

    @Test
    void each_stop_leads_to_the_next_and_the_fifth_ends() {
        String path = "/horn/q-1";
        for (int stop = 2; stop < 5; stop++) {
            Tour tour = TourStops.at(Integer.toString(stop), path, TEXTS);
            assertThat(tour.stop()).isEqualTo(stop);
            assertThat(tour.here()).isTrue();
            assertThat(tour.next())
                    .isEqualTo(TourStops.at(Integer.toString(stop + 1), tour.onward(), TEXTS)
                            .page());
            path = tour.onward();
        }
        assertThat(path).isEqualTo("/horn/q-1/work");
        assertThat(TourStops.at("5", path, TEXTS).next()).isEmpty();
    }

    @Test
    void a_stop_follows_the_person_not_the_other_way_round() {
        assertThat(TourStops.at("1", "/horn/q-1", TEXTS).stop()).isEqualTo(2);
        assertThat(TourStops.at("5", "/horn/q-1/measure", TEXTS).stop()).isEqualTo(3);
    }

    @Test
    void on_any_other_page_it_only_says_where_it_would_go_on() {
        Tour aside = TourStops.at("3", "/horn/q-1/survey", TEXTS);
        assertThat(aside.here()).isFalse();
        assertThat(aside.there()).isEqualTo("/horn/q-1/measure");
        assertThat(TourStops.at("3", "/stock", TEXTS).there()).isEqualTo("/");
    }

    @Test
    void what_a_browser_keeps_may_be_anything() {
        for (String kept : new String[] {"0", "6", "-6", "3x", "", "<b>", "99999999999"}) {
            assertThat(TourStops.at(kept, "/horn/q-1", TEXTS).stop()).as(kept).isZero();
        }
    }

    @Test
    void left_it_is_kept_in_help_to_go_on_with(@TempDir Path folder) throws Exception {
        try (Shop shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
                WebServer server = WebServer.start(new Site(shop), 0)) {
            Wire wire = new Wire(server.address());
            assertThat(wire.get("/").body()).contains("First time at this bench?");
            assertThat(kept(wire, "stop=1")).startsWith("hornwright-tour=1;");
            assertThat(kept(wire, "stop=-3&back=/rules")).startsWith("hornwright-tour=-3;");
            assertThat(kept(wire, "stop=nonsense")).startsWith("hornwright-tour=done;");
            String left = wire.get("/rules", "Cookie: hornwright-tour=-3").body();
            assertThat(left).contains("Go on with the tour at 3 of 5").doesNotContain("class=\"tour\"");
        }
    }

    private static String kept(Wire wire, String form) throws IOException {
        return wire.post("/tour", form).header("Set-Cookie");
    }
}
