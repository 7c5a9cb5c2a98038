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

/** Once a page has said "saved", the value is there whatever happens to the program in that moment. */
final class KeptTest {
    private static final Pattern SAVED = Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d");
    private static final String ALONG = "Low B♭, along the hinge";
    private static final String ACROSS = "Low B♭, across";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Browser browser;

    @SuppressWarnings("NullAway.Init")
    private Program program;

    @BeforeEach
    void open() throws Exception {
        program = Program.start(folder, "--empty");
        browser = Browser.open();
    }

    @AfterEach
    void close() {
        browser.close();
        program.close();
    }

    @Test
    void a_typed_value_its_plan_and_the_drawing_outlive_a_kill() throws Exception {
        Page page = browser.page();
        String horn = putOnTheShelf(page);
        page.navigate(program.address() + horn + "/measure");
        type(page, ALONG, "48.75");
        assertThat(told(page, ALONG)).hasText(SAVED);
        type(page, ACROSS, "48,52");
        assertThat(told(page, ACROSS)).hasText(SAVED);
        String diameter = padDiameter(page);
        Assertions.assertThat(diameter).contains("48.5").contains("mm");

        program.kill();
        program = Program.start(folder);
        page.navigate(program.address() + horn + "/measure");
        assertThat(page.getByLabel(ALONG)).hasValue("48.75");
        assertThat(page.getByLabel(ACROSS)).hasValue("48,52");
        Assertions.assertThat(padDiameter(page)).isEqualTo(diameter);
        page.navigate(program.address() + horn);
        assertThat(page.locator("svg.unrolled .place[data-place='pad.low-b-flat']"))
                .isVisible();
        // The open page may have asked for something in the moment the program was gone.
        Assertions.assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("ERR_CONNECTION_REFUSED"));
    }

    @Test
    void the_same_holds_with_scripts_off() throws Exception {
        Page page = browser.page(1280, 800, ColorScheme.LIGHT, false);
        String horn = putOnTheShelf(page);
        page.navigate(program.address() + horn + "/measure");
        page.getByLabel(ALONG).fill("48.75");
        page.getByLabel(ACROSS).fill("48.52");
        page.getByLabel(ACROSS).press("Enter");
        assertThat(told(page, ALONG)).hasText(SAVED);
        assertThat(told(page, ACROSS)).hasText(SAVED);
        String diameter = padDiameter(page);

        program.kill();
        program = Program.start(folder);
        page.navigate(program.address() + horn + "/measure");
        assertThat(page.getByLabel(ALONG)).hasValue("48.75");
        Assertions.assertThat(padDiameter(page)).isEqualTo(diameter).contains("48.5");
        page.navigate(program.address() + horn);
        assertThat(page.locator("svg.unrolled .place[data-place='pad.low-b-flat']"))
                .isVisible();
    }

    @Test
    void what_is_typed_while_the_program_is_down_is_kept_in_the_page_and_saved_when_it_is_back() throws Exception {
        Page page = browser.page();
        String horn = putOnTheShelf(page);
        page.navigate(program.address() + horn + "/measure");
        int port = java.net.URI.create(program.address()).getPort();
        program.kill();
        type(page, ALONG, "48.75");
        assertThat(told(page, ALONG)).hasText("not saved yet");
        type(page, ACROSS, "48.52");
        program = Program.startAt(port, folder);
        assertThat(told(page, ALONG)).hasText(SAVED);
        assertThat(told(page, ACROSS)).hasText(SAVED);
        page.navigate(program.address() + horn + "/history");
        assertThat(page.locator(".edits .words", new Page.LocatorOptions().setHasText("low B♭ cup")))
                .hasCount(2);
    }

    private String putOnTheShelf(Page page) {
        page.navigate(program.address() + "/");
        page.getByLabel("Tarrant & Loe alto", new Page.GetByLabelOptions().setExact(true))
                .check();
        page.getByLabel("Serial").fill("41207");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Put it on the shelf"))
                .click();
        assertThat(page).hasURL(Pattern.compile(".*/horn/q-\\d{4}"));
        return java.net.URI.create(page.url()).getPath();
    }

    private static void type(Page page, String label, String text) {
        Locator field = page.getByLabel(label);
        field.focus();
        page.keyboard().type(text);
        page.keyboard().press("Enter");
    }

    private static Locator told(Page page, String label) {
        String id = page.getByLabel(label).getAttribute("id");
        return page.locator("[id='said-" + id + "']");
    }

    private static String padDiameter(Page page) {
        return page.locator("[id='row-cup-low-b-flat-diameter']").innerText();
    }
}
