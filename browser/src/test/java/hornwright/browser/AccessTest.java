package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
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

    @SuppressWarnings("NullAway.Init")
    private static AccessWalk walk;

    @BeforeAll
    static void open() throws Exception {
        shown = Shown.in(folder);
        browser = Browser.open();
        walk = AccessWalk.over(shown, browser);
    }

    @AfterAll
    static void close() {
        browser.close();
        shown.program().close();
    }

    @Test
    void axe_finds_nothing_on_any_page_in_either_light_however_narrow() {
        Assertions.assertThat(walk.barriers()).isEmpty();
    }

    @Test
    void no_page_moves_sideways_at_320() {
        Assertions.assertThat(walk.wide()).isEmpty();
    }

    @Test
    void every_control_is_at_least_44_high_at_320() {
        Assertions.assertThat(walk.small()).isEmpty();
    }

    @Test
    void nothing_moves_where_motion_is_not_wanted_and_nothing_long_elsewhere() {
        Assertions.assertThat(walk.moving()).isEmpty();
        Assertions.assertThat(walk.slow()).isEmpty();
    }

    @Test
    void what_is_saved_is_told_without_taking_the_focus() {
        Page page = browser.page();
        page.navigate(shown.program().address() + shown.horn() + "/measure?sheet=depths");
        Locator field = page.locator("form.grid input[type=text]").last();
        field.fill("4.91");
        page.keyboard().press("Tab");
        assertThat(page.locator("#heard[role=status]")).containsText("saved");
        assertThat(field).not().isFocused();
        assertThat(page.locator("#heard")).not().isFocused();
        page.context().close();
    }

    @Test
    void help_opens_by_keyboard_with_scripts_off() {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, false);
        page.navigate(shown.program().address() + shown.horn() + "/neck");
        assertThat(page.locator("#help")).isHidden();
        page.locator(".top a", new Page.LocatorOptions().setHasText("Help")).focus();
        page.keyboard().press("Enter");
        assertThat(page.locator("#help dl")).isVisible();
        page.locator("#help a").click();
        assertThat(page.locator("#help")).isHidden();
        page.context().close();
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
