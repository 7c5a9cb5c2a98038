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

/** One because opened after another: the first is never lost. */
final class BecauseTest {
    private static final Pattern BACK = Pattern.compile("Back to: .+");

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

    @Test
    void a_because_opened_from_another_number_leads_back_to_the_first_and_to_its_row() {
        Page page = plan(true);
        Locator numbers = page.locator("table.ruled a.why");
        numbers.nth(0).click();
        Locator rule = page.locator("#because .reasons > p:not(.why-back)");
        assertThat(rule).hasCount(1);
        assertThat(page.locator(".why-back")).hasCount(0);
        String first = page.locator("#because .reasons").innerHTML();
        String row = rowAbove(page);
        numbers.last().click();
        assertThat(page.locator("#because .why-back a")).hasText(BACK);
        Assertions.assertThat(rowAbove(page)).isNotEqualTo(row);
        page.locator("#because .why-back a").focus();
        page.keyboard().press("Enter");
        assertThat(page.locator(".why-back")).hasCount(0);
        Assertions.assertThat(page.locator("#because .reasons").innerHTML()).isEqualTo(first);
        Assertions.assertThat(rowAbove(page)).isEqualTo(row);
        assertThat(page.locator("#because .why-head")).isFocused();
        Assertions.assertThat(Browser.barriers(page)).isEmpty();
        page.context().close();
    }

    @Test
    void back_and_forward_of_the_browser_go_through_what_was_opened_and_stay_on_the_page() {
        Page page = plan(true);
        String address = page.url();
        page.locator("table.ruled a.why").first().click();
        Locator reasons = page.locator("#because .reasons");
        assertThat(reasons).hasCount(1);
        String first = reasons.innerHTML();
        page.locator("#because table.sum a.why").first().click();
        assertThat(page.locator("#because .why-back")).hasCount(1);
        String second = reasons.innerHTML();
        page.evaluate("history.back()");
        assertThat(page.locator("#because .why-back")).hasCount(0);
        Assertions.assertThat(reasons.innerHTML()).isEqualTo(first);
        page.evaluate("history.forward()");
        assertThat(page.locator("#because .why-back")).hasCount(1);
        Assertions.assertThat(reasons.innerHTML()).isEqualTo(second);
        page.evaluate("history.go(-2)");
        assertThat(page.locator("#because")).isEmpty();
        Assertions.assertThat(page.url()).isEqualTo(address);
        page.context().close();
    }

    @Test
    void with_scripts_off_a_term_is_a_page_that_leads_back_to_the_number_it_was_a_term_of() {
        Page page = plan(false);
        page.locator("table.ruled a.why").first().click();
        assertThat(page.locator(".why-back")).hasCount(0);
        String first = page.locator(".reasons").innerHTML();
        page.locator("table.sum a.why").first().click();
        Assertions.assertThat(page.locator(".reasons").innerHTML()).isNotEqualTo(first);
        page.locator(".why-back a").click();
        Assertions.assertThat(page.locator(".reasons").innerHTML()).isEqualTo(first);
        page.context().close();
    }

    @Test
    void beside_a_place_back_closes_the_because_and_does_not_load_the_horn_again() {
        Page page = browser.page();
        page.navigate(program.address() + "/horn/q-0001?layer=planned&place=pad.low-b-flat");
        page.evaluate("window.here = true");
        page.locator("#place a.why").nth(0).click();
        assertThat(page.locator("#because .reasons")).hasCount(1);
        page.locator("#place > * a.why:not(#because a)").last().click();
        assertThat(page.locator("#because .why-back a")).hasText(BACK);
        page.evaluate("history.back()");
        assertThat(page.locator("#because .why-back")).hasCount(0);
        page.evaluate("history.back()");
        assertThat(page.locator("#because")).isEmpty();
        assertThat(page.locator("#place h2").first()).isVisible();
        Assertions.assertThat(page.evaluate("window.here")).isEqualTo(true);
        page.context().close();
    }

    @Test
    void a_second_tap_on_its_number_closes_a_because_and_so_does_escape() {
        Page page = plan(true);
        String address = page.url();
        Locator number = page.locator("table.ruled a.why").first();
        number.click();
        assertThat(page.locator("#because .reasons")).hasCount(1);
        assertThat(number).hasAttribute("aria-expanded", "true");
        number.click();
        assertThat(page.locator("#because")).isEmpty();
        assertThat(number).not().hasAttribute("aria-expanded", "true");
        number.click();
        page.locator("#because table.sum a.why").first().click();
        assertThat(page.locator("#because .why-back")).hasCount(1);
        page.keyboard().press("Escape");
        assertThat(page.locator("#because")).isEmpty();
        Assertions.assertThat(page.url()).isEqualTo(address);
        page.context().close();
    }

    private static Page plan(boolean scripts) {
        Page page = browser.page(1280, 800, ColorScheme.LIGHT, scripts);
        page.navigate(program.address() + "/horn/q-0001/plan");
        return page;
    }

    private static String rowAbove(Page page) {
        return (String) page.evaluate("document.querySelector('tr.because-row').previousElementSibling.textContent");
    }
}
