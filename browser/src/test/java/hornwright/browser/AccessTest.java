package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything by keyboard, by ear, by gloved finger, in both lights. Source: WCAG 2.2, levels A and AA, as axe tests them. */
final class AccessTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Shown shown;
    private static Browser browser;

    @BeforeAll
    static void open() throws Exception {
        shown = Shown.in(folder);
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
        shown.program().close();
    }

    @Test
    void axe_finds_nothing_on_any_page_in_either_light() {
        List<String> barriers = new ArrayList<>();
        for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            Page page = browser.page(1280, 800, theme, true);
            for (Shown.PageOf one : shown.pages()) {
                page.navigate(shown.program().address() + one.path());
                Browser.barriers(page).forEach(barrier -> barriers.add(one.name() + " " + theme + " " + barrier));
            }
            page.context().close();
        }
        Assertions.assertThat(barriers).isEmpty();
    }

    @Test
    void the_chosen_light_stays_on_every_page() {
        Page page = browser.page();
        page.navigate(shown.program().address() + "/");
        page.getByText("Dark").click();
        page.navigate(shown.program().address() + "/rules");
        assertThat(page.locator("html")).hasAttribute("data-theme", "dark");
        page.context().close();
    }

    @Test
    void every_control_is_at_least_44_high() {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, true);
        List<String> small = new ArrayList<>();
        for (Shown.PageOf one : shown.pages()) {
            page.navigate(shown.program().address() + one.path());
            @SuppressWarnings("unchecked")
            List<String> found = (List<String>) page.evaluate("""
                    () => [...document.querySelectorAll("a, button, input:not([type=hidden]), select, textarea, summary")]
                      .filter(e => e.checkVisibility() && !e.closest("svg") && !e.matches(".skip, .lead a"))
                      .map(e => [e.closest("label.swab, label.plate, label.tick-line") ?? e, e])
                      .filter(([e]) => e.getBoundingClientRect().height < 43.5)
                      .map(([e]) => e.outerHTML.slice(0, 120))""");
            found.forEach(control -> small.add(one.name() + ": " + control));
        }
        page.context().close();
        Assertions.assertThat(small).isEmpty();
    }

    @Test
    void a_place_is_taken_in_hand_by_keyboard() {
        Page page = browser.page();
        page.navigate(shown.program().address() + shown.horn());
        Locator first = page.locator("svg.unrolled .place[tabindex='0']");
        assertThat(first).hasCount(1);
        first.focus();
        page.keyboard().press("ArrowRight");
        Locator now = page.locator("svg.unrolled .place:focus");
        assertThat(now).hasCount(1);
        String place = now.getAttribute("data-place");
        page.keyboard().press("Enter");
        assertThat(page.locator("#place h2").first()).isVisible();
        assertThat(page).hasURL(Pattern.compile(".*place=" + place.replace(".", "\\.")));
        assertThat(page.locator(".every a[data-place='" + place + "']")).hasAttribute("aria-current", "true");
        page.context().close();
    }

    @Test
    void a_finger_beside_a_small_place_takes_the_nearest() {
        Page page = browser.page();
        page.navigate(shown.program().address() + shown.horn());
        Locator cup = page.locator("svg.unrolled .place[data-place='pad.low-b'] .face")
                .first();
        var box = cup.boundingBox();
        page.mouse().click(box.x + box.width / 2, box.y + box.height / 2);
        assertThat(page.locator("#place h2").first()).containsText("ow B");
        page.context().close();
    }

    @Test
    void a_layer_colours_the_drawing_and_keeps_the_place_in_hand() {
        Page page = browser.page();
        page.navigate(shown.program().address() + shown.horn() + "?layer=found&place=pad.low-b");
        page.locator(".layers a", new Page.LocatorOptions().setHasText("As built"))
                .click();
        Locator pad = page.locator("svg.unrolled .place[data-place='pad.d']");
        assertThat(pad).hasAttribute("data-state", "as-built");
        assertThat(pad).hasClass(Pattern.compile(".*m-leather.*"));
        assertThat(page.locator("svg.unrolled .place[data-place='pad.low-b']")).hasAttribute("aria-current", "true");
        assertThat(page.locator("#place h2").first()).containsText("Low B pad");
        page.context().close();
    }
}
