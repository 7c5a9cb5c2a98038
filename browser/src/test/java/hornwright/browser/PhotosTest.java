package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photograph put in and pointed at, with and without scripts. */
final class PhotosTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    @Test
    void a_photograph_is_put_in_from_the_list_and_pointed_at() throws Exception {
        try (Program program = Program.start(folder, "--empty");
                Browser browser = Browser.open()) {
            String horn = program.newHorn("tarrant-loe-alto", "41207");
            for (boolean scripts : new boolean[] {true, false}) {
                Page page = browser.page(390, 844, ColorScheme.LIGHT, scripts);
                page.navigate(program.address() + horn + "/photos");
                page.locator(
                                ".still-wanted a",
                                new Page.LocatorOptions().setHasText(scripts ? "Low key table" : "Palm keys"))
                        .click();
                Path picture = folder.resolve(scripts + ".png");
                page.screenshot(new Page.ScreenshotOptions().setPath(picture));
                page.getByLabel("Photographs", new Page.GetByLabelOptions().setExact(true))
                        .setInputFiles(picture);
                press(page, "Put in");
                assertThat(page.locator(".saved")).hasText(Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d"));
                assertThat(page.locator("#pair-title")).hasText(scripts ? "Low key table" : "Palm keys");
                page.locator(".two-prints a").first().click();
                page.getByLabel("Place", new Page.GetByLabelOptions().setExact(true))
                        .selectOption("pad.low-b");
                press(page, "Row 2, column 3");
                assertThat(page.locator(".pointed a")).hasText("Low B pad");
                page.locator(".pointed a").click();
                assertThat(page.locator("#place-photos img")).hasCount(scripts ? 1 : 2);
            }
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void press(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .first()
                .click();
    }
}
