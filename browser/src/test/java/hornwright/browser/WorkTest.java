package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The order of work as it is worked through, and as it comes undone. */
final class WorkTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    @Test
    void a_step_done_frees_the_next_and_a_change_brings_back_what_rests_on_it() throws Exception {
        try (Program program = Program.start(folder, "--empty");
                Browser browser = Browser.open()) {
            String horn = program.newHorn("tarrant-loe-alto", "");
            Page page = browser.page();
            page.navigate(program.address() + horn + "/work");
            press(page, "Done: Take the photographs of the list");
            assertThat(page.locator(".saved")).hasText(Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d"));
            press(page, "Done: Measure the heights before anything is touched");
            press(page, "Done: Play it and write down the tuning");
            press(page, "Done: Measure the total leak");
            press(page, "Done: Strip the keys in order of removal; bag and label");
            press(page, "Done: Clean off loose dirt");
            press(page, "Done: Mend solder joints, rings and braces");
            press(page, "Done: Raise dents");
            press(page, "Done: Straighten tube and posts");
            press(page, "Changed since: Mend solder joints, rings and braces");
            assertThat(page.locator("h2", new Page.LocatorOptions().setHasText("Look at again")))
                    .isVisible();
            press(page, "Found right: Straighten tube and posts");
            assertThat(page.locator("h2", new Page.LocatorOptions().setHasText("Look at again")))
                    .hasCount(0);
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void a_stage_tells_what_it_voids_before_it_is_said_and_what_it_voided_afterwards() throws Exception {
        try (Program program = Program.start(folder.resolve("voids"), "--demo");
                Browser browser = Browser.open()) {
            Page page = browser.page();
            page.navigate(program.address() + "/horn/q-0001/work");
            page.locator("summary", new Page.LocatorOptions().setHasText("What the next stages void"))
                    .click();
            assertThat(page.locator(".voids dd").first()).containsText("worst rim gap of 7");
            page.getByLabel("The work has come to").selectOption("KEYS_FITTED");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Say so"))
                    .click();
            assertThat(page.locator(".voided")).containsText("No longer counts: ");
            page.locator("summary", new Page.LocatorOptions().setHasText("No longer counts"))
                    .click();
            assertThat(page.locator(".voids li").first()).containsText("front height: ");
            page.navigate(program.address() + "/horn/q-0001/holes");
            assertThat(page.locator(".told .remark").first()).containsText("counts no longer");
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
