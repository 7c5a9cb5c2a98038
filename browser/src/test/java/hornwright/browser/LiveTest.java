package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two windows on one horn. */
final class LiveTest {
    private static final String ALONG = "Low B♭, along the hinge";
    private static final String ACROSS = "Low B♭, across";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Program program;

    @SuppressWarnings("NullAway.Init")
    private Browser browser;

    @SuppressWarnings("NullAway.Init")
    private String horn;

    @BeforeEach
    void open() throws Exception {
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
        program = Program.start(folder, "--empty");
        browser = Browser.open();
        horn = program.newHorn("tarrant-loe-alto", "41207");
    }

    @AfterEach
    void close() {
        PlaywrightAssertions.setDefaultAssertionTimeout(5_000);
        browser.close();
        program.close();
    }

    @Test
    void a_reading_of_one_window_appears_in_the_other_with_what_follows_from_it() {
        Page one = measuring();
        Page other = measuring();
        one.getByLabel("Low B, across").focus();
        type(other, ALONG, "48.75");
        type(other, ACROSS, "48.52");
        assertThat(one.getByLabel(ACROSS)).hasValue("48.52");
        assertThat(one.locator("[id='row-cup-low-b-flat-diameter']")).containsText("48.5");
        assertThat(one.locator(".tray")).containsText("2 readings");
        assertThat(one.getByLabel("Low B, across")).isFocused();
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void over_ones_own_typing_both_values_stand_until_one_is_chosen() {
        Page one = measuring();
        Page other = measuring();
        one.getByLabel(ACROSS).fill("48.60");
        type(other, ACROSS, "48.52");
        assertThat(told(one, ACROSS)).containsText("48.52 there, 48.60 here");
        assertThat(one.getByLabel(ACROSS)).hasValue("48.60");
        one.getByText("Keep 48.60", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(told(one, ACROSS)).hasText(Pattern.compile("saved.*"));
        assertThat(other.getByLabel(ACROSS)).hasValue("48.60");

        one.getByLabel(ACROSS).fill("48.70");
        type(other, ACROSS, "48.55");
        one.getByText("Keep 48.55", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(one.getByLabel(ACROSS)).hasValue("48.55");
        one.reload();
        assertThat(one.getByLabel(ACROSS)).hasValue("48.55");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void the_drawing_takes_on_what_is_found_elsewhere() throws Exception {
        Page page = browser.page();
        page.navigate(program.address() + horn);
        Locator pad = page.locator("svg.unrolled .place[data-place='pad.d']");
        assertThat(pad).hasAttribute("data-state", "missing");
        program.post(
                horn + "/place/pad.d/found",
                Map.of("material", "natural cork", "condition", "WORN", "origin", "LATER", "key", "k1", "seq", "1"));
        assertThat(pad).hasClass(Pattern.compile(".*m-cork.*"));
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    private Page measuring() {
        Page page = browser.page();
        page.navigate(program.address() + horn + "/measure?sheet=cups");
        return page;
    }

    private static void type(Page page, String label, String text) {
        Locator field = page.getByLabel(label, new Page.GetByLabelOptions().setExact(true));
        field.fill(text);
        field.press("Enter");
    }

    private static Locator told(Page page, String label) {
        return page.locator("[id='said-" + page.getByLabel(label).getAttribute("id") + "']");
    }
}
