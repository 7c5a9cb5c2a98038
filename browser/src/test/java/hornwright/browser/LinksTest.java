package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Feelers typed under linked cups become one round of work, and that work is said to be done. */
final class LinksTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Browser browser;

    @SuppressWarnings("NullAway.Init")
    private Program program;

    @BeforeEach
    void open() throws Exception {
        program = Program.start(folder, "--demo");
        browser = Browser.open();
    }

    @AfterEach
    void close() {
        browser.close();
        program.close();
    }

    private static Locator under(Page page, String cup, String key) {
        return page.getByLabel(Pattern.compile("^Under " + cup + "(, .* pressed away)? with " + key + " pressed$"));
    }

    @Test
    void what_is_felt_with_d_pressed_becomes_what_to_take_and_is_done() {
        Page page = browser.page(1280, 800, ColorScheme.LIGHT, true);
        page.navigate(program.address() + "/horn/q-0001/links");
        type(under(page, "D", "D"), "0.21");
        type(under(page, "F♯", "D"), "0");
        type(under(page, "bis", "D"), "0");
        under(page, "G♯", "D").focus();
        assertThat(page.locator("#work")).containsText("D on F♯");
        assertThat(page.locator("#work")).containsText("take");
        assertThat(page.locator("#work")).containsText("then feel again with D");
        // The picture has the gap as it was typed.
        assertThat(page.locator("#set-d")).containsText("0.21");
        assertThat(page.locator("#set-d")).containsText("shut");
        Assertions.assertThat(Browser.barriers(page)).isEmpty();

        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Accept as the work"))
                .click();
        Locator done = page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Done: D on F♯"));
        assertThat(done).isVisible();
        page.navigate(program.address() + "/horn/q-0001/plan");
        assertThat(page.locator("body")).containsText("off what lies there; check by the gauge");
        page.navigate(program.address() + "/horn/q-0001/links");
        done.click();
        assertThat(done).hasCount(0);
        assertThat(page.locator("#said-" + under(page, "D", "D").getAttribute("id")))
                .containsText("no longer counts, feel again");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void while_typing_the_page_shows_what_would_follow_and_keeps_nothing() {
        Page page = browser.page(390, 844, ColorScheme.DARK, true);
        page.navigate(program.address() + "/horn/q-0001/links");
        Locator field = under(page, "D", "D");
        field.click();
        field.pressSequentially("0.18");
        assertThat(page.locator("#work.ahead")).containsText("Felt at 1 of");
        page.reload();
        assertThat(field).hasValue("");
        int width = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
        Assertions.assertThat(width).isLessThanOrEqualTo(390);
        Assertions.assertThat(Browser.barriers(page)).isEmpty();
    }

    @Test
    void what_moves_once_it_has_packed_opens_its_because_and_leads_to_the_day() {
        Page page = browser.page(820, 1180, ColorScheme.LIGHT, true);
        page.navigate(program.address() + "/horn/q-0001/links#packed");
        Locator packed = page.locator("#packed");
        assertThat(packed).containsText("a gap most likely opens");
        packed.getByText("What each contact loses").click();
        packed.locator("details[open] .why").first().click();
        assertThat(page.locator("#because")).containsText("share the material loses");
        packed.getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("The day stands on the hand-over"))
                .click();
        assertThat(page.locator(".signing")).containsText("parts of the packing are over by then");
        Assertions.assertThat(Browser.barriers(page)).isEmpty();
    }

    private static void type(Locator field, String text) {
        field.fill(text);
        field.press("Enter");
    }
}
