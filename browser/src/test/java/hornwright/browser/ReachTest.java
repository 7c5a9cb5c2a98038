package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The unrolled horn under a thumb, a mouse, a wheel and a keyboard. */
final class ReachTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Program program;
    private static Browser browser;

    @BeforeAll
    static void start() throws Exception {
        program = Program.start(folder);
        browser = Browser.open();
    }

    @AfterAll
    static void stop() {
        Assertions.assertThat(browser.complaints()).isEmpty();
        browser.close();
        program.close();
    }

    /**
     * Touches are given to the page as a finger gives them, at the middle and at eight spots on a ring round it: a disc 24
     * pixels across, WCAG 2.2 criterion 2.5.8 (from memory), all of which must open the place.
     */
    private static final String MEASURE = """
            async diameter => {
              htmx.ajax = () => new Promise(() => {});
              const stage = document.querySelector(".stage"), lens = stage.querySelector(".lens");
              const whole = stage.querySelector("[data-zoom='0']");
              const places = [...stage.querySelectorAll(".place")];
              const size = () => lens.style.getPropertyValue("--zoom");
              const tap = (x, y) => {
                document.activeElement?.blur();
                const on = document.elementFromPoint(x, y);
                if (!on || !lens.contains(on)) return "";
                on.dispatchEvent(new PointerEvent("click", { bubbles: true, cancelable: true, clientX: x, clientY: y, pointerType: "touch", detail: 1 }));
                return document.activeElement?.dataset?.place ?? "";
              };
              const spots = place => {
                const line = place.querySelector(".spring, .bead, .guard") ?? place.querySelector(".rim, .face") ?? place.querySelector(":not(title)");
                const box = line.getBoundingClientRect(), matrix = line.getScreenCTM(), all = [];
                all.push([box.left + box.width / 2, box.top + box.height / 2]);
                for (let i = 0; i < 8; i++) {
                  const on = line.getPointAtLength(line.getTotalLength() * i / 8).matrixTransform(matrix);
                  for (const [x, y] of [[0, 0], [9, 0], [-9, 0], [0, 9], [0, -9]]) all.push([on.x + x, on.y + y]);
                }
                return all;
              };
              const ring = [[0, 0]];
              for (let i = 0; i < 8; i++) ring.push([Math.cos(i * Math.PI / 4) * diameter / 2, Math.sin(i * Math.PI / 4) * diameter / 2]);
              const opens = place => {
                const before = size();
                return spots(place).some(([x, y]) => ring.every(([dx, dy]) => tap(x + dx, y + dy) === place.dataset.place && size() === before));
              };
              const back = place => {
                if (size() !== "1") whole.click();
                const box = place.getBoundingClientRect();
                scrollBy(0, box.top + box.height / 2 - innerHeight / 2);
              };
              // No touch of the disc opens anything else; one that brings the places apart first is no mistake.
              const direct = place => {
                back(place);
                const starts = spots(place).filter(([x, y], at) => at % 5 < 2 && tap(x, y) === place.dataset.place && size() === "1");
                return starts.slice(0, 3).some(([x, y]) => ring.every(([dx, dy]) => {
                  back(place);
                  return tap(x + dx, y + dy) === place.dataset.place || Number(size()) > 1;
                }));
              };
              const apart = place => {
                back(place);
                return spots(place).filter((spot, at) => at % 10 < 1).some(([x, y]) => {
                  back(place);
                  return !tap(x, y) && Number(size()) > 1 && opens(place);
                });
              };
              // By its name, among those that lay under the finger.
              const named = place => { back(place); return spots(place).slice(0, 6).some(([x, y]) => {
                back(place);
                const name = !tap(x, y) && document.querySelector(`.near a[data-place="${place.dataset.place}"]`)?.getBoundingClientRect();
                return name && Math.min(name.width, name.height) >= 44 && name.bottom <= innerHeight && name.right <= innerWidth;
              }); };
              const result = { one: [], zoomed: [], named: [], kin: [], none: [] };
              const rest = [];
              for (const place of places) {
                if (direct(place)) result.one.push(place.dataset.place);
                else if (apart(place)) result.zoomed.push(place.dataset.place);
                else if (named(place)) result.named.push(place.dataset.place);
                else rest.push(place.dataset.place);
              }
              const beside = new Set();
              if (rest.length) for (const one of result.one) {
                const panel = document.createElement("div");
                panel.innerHTML = await (await fetch("/horn/q-0001/place/" + one, { headers: { "X-Live": "yes" } })).text();
                for (const kin of panel.querySelectorAll(".kin a[data-place]")) beside.add(kin.dataset.place);
              }
              for (const id of rest) (beside.has(id) ? result.kin : result.none).push(id);
              return result;
            }""";

    @Test
    void on_a_phone_every_place_of_the_horn_opens_by_at_most_two_taps_on_what_is_large_enough() {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, true);
        page.navigate(program.address() + "/horn/q-0001");
        Map<String, List<String>> reached = measured(page, 24);
        Assertions.assertThat(reached.get("none")).isEmpty();
        Assertions.assertThat(reached.get("zoomed")).hasSizeGreaterThan(100);
        page.context().close();
    }

    @Test
    void the_arrows_go_through_the_places_in_bench_order_and_page_down_by_groups_of_keys() {
        Page page = horn(1280, 800, true);
        List<String> order = lines(page, ".every a[data-place]");
        page.locator("svg.unrolled .place[tabindex='0']").focus();
        page.keyboard().press("Home");
        for (int step = 1; step < 6; step++) {
            page.keyboard().press(step % 2 == 0 ? "ArrowRight" : "ArrowDown");
            Assertions.assertThat(inHand(page)).isEqualTo(order.get(step));
        }
        page.keyboard().press("ArrowLeft");
        Assertions.assertThat(inHand(page)).isEqualTo(order.get(4));
        page.keyboard().press("PageDown");
        Assertions.assertThat(inHand(page))
                .isEqualTo(lines(page, ".every details:nth-of-type(2) a[data-place]")
                        .getFirst());
        page.keyboard().press("End");
        Assertions.assertThat(inHand(page)).isEqualTo(order.getLast());
        page.context().close();
    }

    @Test
    void keys_buttons_and_a_wheel_bring_the_drawing_closer_and_back_and_a_held_mouse_moves_it() {
        Page page = horn(1280, 800, true);
        page.locator("svg.unrolled .place[data-place='pad.palm-d']").focus();
        page.keyboard().press("+");
        Assertions.assertThat(size(page)).isEqualTo(2);
        page.locator("[data-zoom='2']").click();
        Assertions.assertThat(size(page)).isEqualTo(4);
        page.locator("[data-zoom='0']").click();
        Assertions.assertThat(size(page)).isEqualTo(1);
        page.locator(".lens").scrollIntoViewIfNeeded();
        page.mouse().move(600, 500);
        page.keyboard().down("Control");
        page.mouse().wheel(0, -240);
        page.keyboard().up("Control");
        page.waitForFunction("Number(document.querySelector('.lens').style.getPropertyValue('--zoom')) > 2");
        double left = ((Number) page.evaluate("document.querySelector('.lens').scrollLeft")).doubleValue();
        page.mouse().down();
        page.mouse().move(500, 500);
        page.mouse().up();
        Assertions.assertThat(((Number) page.evaluate("document.querySelector('.lens').scrollLeft")).doubleValue())
                .isGreaterThan(left + 80);
        Assertions.assertThat(page.url()).doesNotContain("place=");
        page.context().close();
    }

    @Test
    void a_place_is_found_by_what_it_is_called_with_scripts_on_and_off() {
        for (boolean scripts : List.of(true, false)) {
            Page page = horn(390, 844, scripts);
            page.locator("#seek-place").fill("g# foot");
            page.keyboard().press("Enter");
            assertThat(page.locator("#place h2").first()).hasText("G♯ foot");
            page.locator("#seek-place").fill("palm d");
            page.keyboard().press("Enter");
            assertThat(page.locator(".sought")).containsText("answer to “palm d”");
            page.locator(".sought a").first().click();
            assertThat(page.locator("#place h2").first()).containsText("Palm D");
            page.locator("#seek-place").fill("zither");
            page.keyboard().press("Enter");
            assertThat(page.locator(".sought")).containsText("No place of this horn is called “zither”");
            page.context().close();
        }
    }

    @Test
    void with_scripts_off_a_part_fills_the_drawing_and_each_of_its_places_is_a_link() {
        Page page = horn(390, 844, false);
        page.locator(".parts a")
                .filter(new Locator.FilterOptions().setHasText("Palm keys"))
                .click();
        Locator pad = page.locator(".place[data-place='pad.palm-d'] .rim");
        Assertions.assertThat(pad.boundingBox().width).isGreaterThan(24);
        pad.scrollIntoViewIfNeeded();
        var box = pad.boundingBox();
        page.mouse().click(box.x + box.width * .25, box.y + box.height * .3);
        assertThat(page.locator("#place h2").first()).hasText("Palm D pad");
        page.locator(".kin a")
                .filter(new Locator.FilterOptions().setHasText("Palm D pad adhesive"))
                .click();
        assertThat(page.locator("#place h2").first()).hasText("Palm D pad adhesive");
        page.context().close();
    }

    @Test
    void every_layer_says_in_words_what_it_shows_and_keeps_size_and_place_in_hand() {
        Page page = horn(1280, 800, true);
        page.locator("svg.unrolled .place[data-place='pad.low-b']").focus();
        page.keyboard().press("+");
        for (String layer :
                List.of("as-built", "origin", "planned", "done", "size", "height", "leak", "force", "found")) {
            page.locator(".layers a[data-layer='" + layer + "']").click();
            assertThat(page.locator(".layers a[data-layer='" + layer + "']")).hasAttribute("aria-current", "true");
            Assertions.assertThat(page.locator(".legend li").allInnerTexts())
                    .as(layer)
                    .isNotEmpty()
                    .noneMatch(String::isBlank);
            Assertions.assertThat(size(page)).as(layer).isEqualTo(2);
            Assertions.assertThat(Browser.barriers(page)).as(layer).isEmpty();
        }
        page.locator(".layers a[data-layer='size']").click();
        assertThat(page.locator(".place[data-place='pad.low-b']"))
                .hasAttribute("aria-label", Pattern.compile("low B pad, pad diameter [0-9.]+ .*mm"));
        assertThat(page.locator(".labels.lying")).not().containsText("low B");
        page.context().close();
    }

    private static Page horn(int width, int height, boolean scripts) {
        Page page = browser.page(width, height, ColorScheme.LIGHT, scripts);
        page.navigate(program.address() + "/horn/q-0001");
        return page;
    }

    @SuppressWarnings("unchecked")
    private static List<String> lines(Page page, String selector) {
        return (List<String>) page.locator(selector).evaluateAll("all => all.map(one => one.dataset.place)");
    }

    private static String inHand(Page page) {
        return (String) page.evaluate("document.activeElement.dataset.place");
    }

    private static double size(Page page) {
        return Double.parseDouble(
                (String) page.evaluate("document.querySelector('.lens').style.getPropertyValue('--zoom')"));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, List<String>> measured(Page page, int diameter) {
        page.setDefaultTimeout(120_000);
        return (Map<String, List<String>>) page.evaluate(MEASURE, diameter);
    }
}
