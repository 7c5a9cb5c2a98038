package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench sheets as they are filled in. */
final class SheetsTest {
    private static final Pattern SAVED = Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    @Test
    void a_sheet_answers_while_one_types_keeps_what_is_left_and_never_passes_an_untried_horn() throws Exception {
        try (Program program = Program.start(folder, "--empty");
                Browser browser = Browser.open()) {
            String horn = program.newHorn("tarrant-loe-alto", "");
            Page page = browser.page();
            page.navigate(program.address() + horn + "/fit");
            Locator palm = page.locator("#row-palm-d");
            palm.getByLabel("Palm D, felt across, along").fill("loose, none");
            assertThat(palm.locator(".sheet-answer.ahead .st")).hasText("to do");
            palm.getByLabel("Palm D, felt across, along").press("Tab");
            assertThat(palm.locator(".saved").first()).hasText(SAVED);
            assertThat(page.locator("#sheet-sum")).containsText("to fit before any pad: palm D");

            page.navigate(program.address() + horn + "/leaks");
            Locator pad = page.locator("#row-pad-palm-d");
            pad.locator("select").selectOption("leaks");
            assertThat(pad.locator(".saved")).hasText(SAVED);
            assertThat(pad.locator(".says")).containsText("weakens most");
            assertThat(page.locator("#sheet-sum")).containsText("sites are untried");

            page.navigate(program.address() + horn + "/body");
            page.locator(".pinning svg").click();
            page.getByLabel("How long").fill("14");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Set the pin"))
                    .click();
            assertThat(page.locator(".pin-list > li")).hasCount(1);
            assertThat(page.locator(".pins .pin")).hasCount(1);
            page.setViewportSize(390, 844);
            Locator drawing = page.locator(".pinning");
            double width = drawing.boundingBox().width;
            drawing.click(new Locator.ClickOptions().setPosition(width / 2, 24));
            page.getByLabel("How long").fill("5");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Set the pin"))
                    .click();
            assertThat(page.locator(".pin-list .where").first()).containsText("Neck");
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void a_sheet_works_with_scripts_off(@TempDir Path other) throws Exception {
        try (Program program = Program.start(other, "--empty");
                Browser browser = Browser.open()) {
            String horn = program.newHorn("tarrant-loe-alto", "");
            Page page = browser.page(1280, 800, com.microsoft.playwright.options.ColorScheme.LIGHT, false);
            page.navigate(program.address() + horn + "/holes");
            page.getByLabel("D, drawn rim: gap at clock", new Page.GetByLabelOptions().setExact(true))
                    .fill("0.12 at 4");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep what is typed"))
                    .click();
            assertThat(page.locator("#row-d .st").first()).hasText("to do");
            assertThat(page.locator("#sheet-sum")).containsText("to level first: D");
        }
    }
}
