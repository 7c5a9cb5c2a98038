package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.survey.Condition;
import hornwright.bench.survey.GroupFinding;
import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The survey by groups of keys, painted as a page without scripts paints it. */
final class SurveyPagesTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Shop shop;
    private static WebServer server;
    private static Wire wire;

    @BeforeAll
    static void start() throws Exception {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
        server = WebServer.start(new Site(shop), 0);
        wire = new Wire(server.address());
    }

    @AfterAll
    static void stop() {
        server.close();
        shop.close();
    }

    @Test
    void what_was_also_seen_stays_when_a_group_is_painted_again() throws IOException {
        String horn = horn("1");
        paint(horn, 2, "stroke-bell-adhesive", "bell", "adhesive", "shellac", "also=hot-melt%2C+contact+cement");
        String page = wire.get(horn + "/survey").body();
        assertThat(page)
                .contains("mostly shellac, also hot-melt and contact cement")
                .contains("name=\"also\" maxlength=\"200\" size=\"14\" value=\"hot-melt, contact cement\"");
        paint(horn, 3, "stroke-bell-adhesive", "bell", "adhesive", "hide glue", "also=hot-melt%2C+contact+cement");
        assertThat(wire.get(horn + "/survey").body()).contains("mostly hide glue, also hot-melt and contact cement");
    }

    @Test
    void the_state_said_of_a_group_is_that_of_each_place_nobody_looked_at_itself() throws IOException {
        String horn = horn("2");
        paint(horn, 2, "stroke-palm-foot", "palm", "foot", "natural cork", "condition=PACKED");
        assertThat(wire.get(horn + "/survey").body()).contains("mostly natural cork, packed");
        assertThat(wire.get(horn + "/place/foot.palm-d", "X-Live: yes").body())
                .contains("natural cork, packed, by its group");
        paint(horn, 3, "stroke-palm-foot", "palm", "foot", "natural cork", "condition=SOUND");
        assertThat(wire.get(horn + "/place/foot.palm-d", "X-Live: yes").body())
                .contains("natural cork, sound, by its group");
    }

    @Test
    void the_groups_left_take_after_one_stroke_in_one_edit_and_those_painted_before_stay() throws IOException {
        String horn = horn("3");
        paint(horn, 2, "stroke-palm-pad", "palm", "pad", "kid leather over felt", "condition=HARD");
        paint(
                horn,
                3,
                "stroke-bell-pad",
                "bell",
                "pad",
                "brown leather over felt",
                "condition=SOFT&missing=1&others=yes");
        List<GroupFinding> pads = shop.jobNow(horn.substring("/horn/".length())).findings().groups().stream()
                .filter(one -> one.placeKind().equals("pad"))
                .toList();
        assertThat(pads).hasSizeGreaterThan(5);
        assertThat(pads)
                .filteredOn(one -> one.group().equals("palm"))
                .singleElement()
                .satisfies(palm -> {
                    assertThat(palm.mostly()).isEqualTo("kid leather over felt");
                    assertThat(palm.state()).isEqualTo(Condition.HARD);
                });
        assertThat(pads).filteredOn(one -> !one.group().equals("palm")).allSatisfy(one -> {
            assertThat(one.mostly()).isEqualTo("brown leather over felt");
            assertThat(one.state()).isEqualTo(Condition.SOFT);
        });
        assertThat(pads.stream().mapToInt(GroupFinding::missing).sum()).isEqualTo(1);
        assertThat(shop.job(horn.substring("/horn/".length())).seq()).isEqualTo(4);
    }

    private static String horn(String serial) throws IOException {
        return wire.post("/horns", "pattern=tarrant-loe-alto&serial=4120" + serial + "&use=WORKING")
                .header("Location");
    }

    private static void paint(
            String horn, int seq, String stroke, String group, String kind, String material, String more)
            throws IOException {
        Wire.Answer answer = wire.post(
                horn + "/survey",
                "seq=%d&stroke=%s&group=%s&kind=%s&material=%s&%s"
                        .formatted(seq, stroke, group, kind, material.replace(' ', '+'), more));
        assertThat(answer.status()).isEqualTo(303);
    }
}
