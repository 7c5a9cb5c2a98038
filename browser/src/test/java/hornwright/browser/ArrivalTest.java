package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Taking a horn in, by hand and with scripts off. */
final class ArrivalTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Program program;

    @SuppressWarnings("NullAway.Init")
    private Browser browser;

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
    void owner_complaint_and_use_are_kept_and_the_name_stays_out_of_the_history() throws Exception {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, false);
        String horn = program.newHorn("tarrant-loe-alto", "41207");
        page.navigate(program.address() + horn + "/arrival");
        page.getByLabel(Pattern.compile("^Owner")).fill("Mill Street Band");
        page.getByLabel("In the owner’s words").fill("gurgles below D");
        page.getByLabel("The horn is for").selectOption("DISPLAY");
        page.getByText("Keep it", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.getByLabel(Pattern.compile("^Owner"))).hasValue("Mill Street Band");
        assertThat(page.getByLabel("The horn is for")).hasValue("DISPLAY");
        Assertions.assertThat(program.get(horn + "/history"))
                .contains("Owner and complaint amended")
                .doesNotContain("Mill Street");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_tick_on_the_photograph_list_is_kept_as_it_is_set_and_can_be_taken_off() throws Exception {
        Page page = browser.page();
        String horn = program.newHorn("tarrant-loe-alto", "41207");
        page.navigate(program.address() + horn + "/arrival");
        page.getByLabel("Serial number").check();
        assertThat(page.locator("#photographs .saved")).hasText(Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d"));
        page.getByLabel("Low key table").check();
        assertThat(page.locator("#photographs")).containsText("2 of 30 taken");
        page.getByLabel("Serial number").uncheck();
        assertThat(page.locator("#photographs")).containsText("1 of 30 taken");
        page.reload();
        assertThat(page.getByLabel("Low key table")).isChecked();
        assertThat(page.getByLabel("Serial number")).not().isChecked();
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void what_the_horn_lacks_goes_from_the_drawing_unless_a_reading_would_lie_nowhere() throws Exception {
        Page page = browser.page();
        String horn = program.newHorn("tarrant-loe-alto", "41207");
        page.navigate(program.address() + horn + "/measure?sheet=cups");
        sideFSharp(page, "21.9");
        page.navigate(program.address() + horn + "/arrival");
        page.getByText("What it has and lacks").click();
        page.getByLabel("Side F♯").selectOption("no");
        page.getByText("Put it right").click();
        assertThat(page.locator("#which .fault")).containsText("take it back first");

        page.navigate(program.address() + horn + "/measure?sheet=cups");
        sideFSharp(page, "");
        page.navigate(program.address() + horn + "/arrival");
        page.getByText("What it has and lacks").click();
        page.getByLabel("Side F♯").selectOption("no");
        page.getByText("Put it right").click();
        assertThat(page).hasURL(Pattern.compile(".*#which"));
        page.navigate(program.address() + horn);
        assertThat(page.locator("svg.unrolled .place[data-place='pad.d']")).hasCount(1);
        assertThat(page.locator("svg.unrolled .place[data-place='pad.side-f-sharp']"))
                .hasCount(0);
    }

    private static void sideFSharp(Page page, String text) {
        Locator field = page.getByLabel("Side F♯, along the hinge");
        field.fill(text);
        field.press("Enter");
        assertThat(page.locator("[id='said-" + field.getAttribute("id") + "']"))
                .hasText(text.isEmpty() ? Pattern.compile("^$") : Pattern.compile("saved.*"));
    }
}
