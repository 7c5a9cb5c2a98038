package hornwright.desk.web;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.use.OpenShop;
import hornwright.desk.use.Shop;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rules and counts are told and taken back like everything else. */
final class ShopHistoryTest {
    private static final Pattern LINE = Pattern.compile(
            "action=\"(/history/[a-z]+/undo)\">(?:(?!</form>).)*name=\"edit\" value=\"(\\d+)\"", Pattern.DOTALL);

    @Test
    void a_rule_set_and_a_count_are_lines_that_can_be_taken_back(@TempDir Path folder) throws Exception {
        try (Shop shop = OpenShop.open(new OpenShop.Where.Folder(folder), OpenShop.FirstRun.EMPTY, Clock.systemUTC());
                WebServer server = WebServer.start(new Site(shop), 0)) {
            Wire wire = new Wire(server.address());
            wire.post("/rules", "rule=pad.allowance_mm&value=0.5&key=k1&seq=0");
            wire.post("/stock", "kind=PAD&material=kid+leather&diameter=48.5&count=3&key=k2&seq=0");
            assertThat(shop.house()
                            .state()
                            .rules()
                            .find("pad.allowance_mm")
                            .orElseThrow()
                            .value())
                    .isEqualTo(0.5);

            String page = wire.get("/history").body();
            assertThat(page).contains("kid leather").contains("0.5");
            Matcher newest = LINE.matcher(page);
            int lines = 0;
            while (newest.find()) {
                Wire.Answer back = wire.post(newest.group(1), "edit=" + newest.group(2) + "&key=u" + lines);
                assertThat(back.status()).isEqualTo(303);
                lines++;
            }
            assertThat(lines).as("the name of the shop, a rule, goods").isEqualTo(3);
            assertThat(shop.house()
                            .state()
                            .rules()
                            .find("pad.allowance_mm")
                            .orElseThrow()
                            .value())
                    .isZero();
            assertThat(shop.stock().state().items()).isEmpty();
            assertThat(wire.get("/history").body()).contains("taken back");
        }
    }
}
