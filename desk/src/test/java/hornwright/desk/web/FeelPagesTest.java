package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The feel of a horn and its keys from the side, as plain pages without scripts. */
@Tag("slow")
final class FeelPagesTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Shop shop;
    private static WebServer server;
    private static Wire wire;
    private static String horn;

    @BeforeAll
    static void start() throws Exception {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
        server = WebServer.start(new Site(shop), 0);
        wire = new Wire(server.address());
        horn = wire.post("/horns", "pattern=tarrant-loe-alto&serial=41207&use=WORKING")
                .header("Location");
    }

    @AfterAll
    static void stop() {
        server.close();
        shop.close();
    }

    @Test
    void every_number_of_the_page_opens_its_because() throws IOException {
        String page = wire.get(horn + "/feel").body();
        Matcher why = Pattern.compile("href=\"(/horn/[^\"]*because[^\"]*)\"").matcher(page);
        int opened = 0;
        while (why.find() && opened < 60) {
            Wire.Answer because = wire.get(why.group(1).replace("&amp;", "&"));
            assertThat(because.status()).as(why.group(1)).isEqualTo(200);
            opened++;
        }
        assertThat(opened).isEqualTo(60);
        assertThat(page).contains("None of the 22 touches was weighed yet").contains("held shut by the G♯ lever");
    }

    @Test
    void a_touch_that_is_weighed_is_shown_as_read() throws IOException {
        String other = wire.post("/horns", "pattern=tarrant-loe-tenor&serial=52110&use=WORKING")
                .header("Location");
        wire.post(other + "/readings", "sheet=touches&seq=1&r%2FTOUCH_WEIGHT%2Ff%2Fmiddle+of+the+touch=0.93");
        assertThat(wire.get(other + "/feel").body())
                .containsPattern("1 of \\d+ touches were weighed")
                .contains("pearl weighed")
                .contains("<span>0.9</span> <span class=\"pm\">± 0.2 N");
        assertThat(wire.get(other + "/lever/f").body()).contains("does its work");
    }

    @Test
    void a_touch_weighed_with_a_balance_is_as_sure_as_the_balance() throws IOException {
        String other = wire.post("/horns", "pattern=tarrant-loe-tenor&serial=52111&use=WORKING")
                .header("Location");
        assertThat(wire.get(other + "/measure?sheet=touches").body())
                .contains("<option value=\"force gauge\" selected>", "<option value=\"balance\">");
        wire.post(
                other + "/readings",
                "sheet=touches&seq=1&with=balance&r%2FTOUCH_WEIGHT%2Ff%2Fmiddle+of+the+touch=0.93");
        assertThat(wire.get(other + "/feel").body()).contains("<span>0.93</span> <span class=\"pm\">± 0.06 N");
        assertThat(wire.get(other + "/measure?sheet=play").body()).doesNotContain("Read with");
    }

    @Test
    void every_key_has_its_page_and_its_sheet_on_either_paper() throws IOException {
        for (String key : new String[] {"low-b-flat", "f-sharp", "g-sharp-lever", "octave-thumb"}) {
            Wire.Answer page = wire.get(horn + "/lever/" + key);
            assertThat(page.status()).as(key).isEqualTo(200);
            assertThat(page.body()).contains("class=\"lever\"");
            for (String size : new String[] {"", "?size=letter"}) {
                Wire.Answer sheet = wire.get(horn + "/lever/" + key + "/sheet.pdf" + size);
                assertThat(sheet.header("Content-Type")).isEqualTo("application/pdf");
                assertThat(sheet.body()).startsWith("%PDF");
            }
        }
        assertThat(wire.get(horn + "/lever/moustache").status()).isEqualTo(404);
    }

    @Test
    void the_class_of_pads_is_settled_for_the_horn_or_for_one_pad_and_taken_back() throws IOException {
        String other = wire.post("/horns", "pattern=tarrant-loe-alto&serial=41300&use=WORKING")
                .header("Location");
        assertThat(wire.get(other + "/closing").body()).contains("the usual class; nobody chose another");
        wire.post(other + "/closing/pads", "seq=1&key=a&padClass=FIRM&why=plays+hard");
        assertThat(wire.get(other + "/closing").body()).contains("settled for the whole horn: plays hard");
        wire.post(other + "/place/pad.e/pad-class", "seq=2&key=b&padClass=SOFT&why=thin+cup");
        assertThat(wire.get(other + "?place=pad.e").body()).contains("settled for this pad: thin cup");
        wire.post(other + "/place/pad.e/pad-class", "seq=" + seq(other) + "&key=c&back=yes");
        assertThat(wire.get(other + "?place=pad.e").body()).contains("settled for the whole horn: plays hard");
        assertThat(wire.post(other + "/closing/pads", "seq=4&key=d&padClass=WOOD")
                        .status())
                .isEqualTo(422);
        assertThat(wire.post(other + "/place/foot.e/pad-class", "seq=4&key=e&padClass=SOFT")
                        .status())
                .isEqualTo(422);
    }

    private static String seq(String of) throws IOException {
        Matcher seq = Pattern.compile("name=\"seq\" value=\"(\\d+)\"")
                .matcher(wire.get(of + "?place=pad.e").body());
        assertThat(seq.find()).isTrue();
        return seq.group(1);
    }

    @Test
    void the_pads_are_shown_closing_and_no_sum_passes_the_horn() throws IOException {
        Wire.Answer page = wire.get(horn + "/closing");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body())
                .contains("no sum passes a horn")
                .contains("helps most:")
                .contains("No rim of this horn has been measured");
        Matcher why = Pattern.compile("href=\"(/horn/[^\"]*because[^\"]*)\"").matcher(page.body());
        int opened = 0;
        while (why.find() && opened < 30) {
            assertThat(wire.get(why.group(1).replace("&amp;", "&")).status())
                    .as(why.group(1))
                    .isEqualTo(200);
            opened++;
        }
        assertThat(opened).isEqualTo(30);
    }
}
