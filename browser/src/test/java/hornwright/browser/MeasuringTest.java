package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The measuring grid under a caliper that types, and under fingers that slip. */
final class MeasuringTest {
    private static final Pattern SAVED = Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Program program;
    private static Browser browser;

    private String horn = "";

    @SuppressWarnings("NullAway.Init")
    private Page page;

    @BeforeAll
    static void start() throws Exception {
        program = Program.start(folder, "--empty");
        browser = Browser.open();
    }

    @AfterAll
    static void stop() {
        browser.close();
        program.close();
    }

    @BeforeEach
    void open() throws Exception {
        horn = program.newHorn("tarrant-loe-alto", "");
        page = browser.page();
        page.navigate(program.address() + horn + "/measure");
    }

    @AfterEach
    void no_page_complained() {
        page.context().close();
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void the_first_empty_field_is_ready_for_the_caliper() {
        assertThat(field("Low B♭, along the hinge")).isFocused();
    }

    @Test
    void bursts_of_a_caliper_fill_one_field_after_the_other_and_none_is_lost() {
        String[] bursts = {"48.75", "48.52", "47.40", "47.37", "39.65", "39.71", "40.94", "41.03"};
        for (String burst : bursts) {
            page.keyboard().type(burst);
            page.keyboard().press("Enter");
        }
        assertThat(field("Low E♭, along the hinge")).isFocused();
        assertThat(page.locator(".told .saved", new Page.LocatorOptions().setHasText(SAVED)))
                .hasCount(bursts.length);
        page.reload();
        assertThat(field("Low C, across")).hasValue("41.03");
        assertThat(field("Low B, along the hinge")).hasValue("47.40");
    }

    @Test
    void a_caliper_that_ends_with_tab_works_as_well() {
        page.keyboard().type("48.75");
        page.keyboard().press("Tab");
        page.keyboard().type("48.52");
        page.keyboard().press("Tab");
        assertThat(told("Low B♭, along the hinge")).hasText(SAVED);
        assertThat(told("Low B♭, across")).hasText(SAVED);
    }

    @Test
    void a_length_that_could_be_read_two_ways_is_asked_about_beside_its_field_and_not_kept() {
        type("Low B♭, along the hinge", "1.234,5");
        assertThat(told("Low B♭, along the hinge")).containsText("could be read two ways");
        assertThat(field("Low B♭, along the hinge")).hasAttribute("aria-invalid", "true");
        assertThat(field("Low B♭, along the hinge")).hasValue("1.234,5");
        type("Low B♭, along the hinge", "48.7");
        assertThat(told("Low B♭, along the hinge")).hasText(SAVED);
    }

    @Test
    void a_reading_about_25_times_too_small_is_asked_inch_or_millimetre() {
        type("Low B♭, along the hinge", "1.92");
        assertThat(told("Low B♭, along the hinge")).containsText("Inch or millimetre?");
        type("Low B♭, along the hinge", "1.92 in");
        assertThat(told("Low B♭, along the hinge")).containsText(Pattern.compile("saved .*= 48.77 mm"));
    }

    @Test
    void typing_shows_what_would_follow_and_keeps_nothing_before_the_field_is_left() {
        Locator diameter = page.locator("[id='row-cup-low-b-flat-diameter']");
        assertThat(diameter).hasText("–");
        page.keyboard().type("48.6");
        assertThat(page.locator("[id='row-cup-low-b-flat-diameter'].ahead")).containsText("48.5");
        Page other = browser.page();
        other.navigate(program.address() + horn + "/measure");
        assertThat(other.getByLabel("Low B♭, along the hinge")).hasValue("");
        other.context().close();
        page.keyboard().press("Enter");
        assertThat(told("Low B♭, along the hinge")).hasText(SAVED);
        assertThat(page.locator("[id='row-cup-low-b-flat-diameter'].ahead")).hasCount(0);
        assertThat(diameter).containsText("48.5");
    }

    @Test
    void the_because_of_a_number_opens_with_one_tap() {
        type("Low B♭, along the hinge", "48.6");
        page.locator("[id='row-cup-low-b-flat-diameter'] a").click();
        assertThat(page.locator("#because")).containsText("Because");
        assertThat(page.locator("#because")).containsText("48.6");
    }

    @Test
    void with_scripts_off_all_faults_stand_above_the_grid_and_what_was_good_is_kept() {
        Page plain = browser.page(1280, 800, ColorScheme.LIGHT, false);
        plain.navigate(program.address() + horn + "/measure");
        plain.getByLabel("Low B♭, along the hinge").fill("48.75");
        plain.getByLabel("Low B, along the hinge").fill("forty");
        plain.getByLabel("Low B, across").fill("1,2,3");
        plain.getByLabel("Low B, across").press("Enter");
        assertThat(plain.locator(".troubles li")).hasCount(2);
        assertThat(plain.getByLabel("Low B, along the hinge")).hasValue("forty");
        plain.navigate(program.address() + horn + "/measure");
        assertThat(plain.getByLabel("Low B♭, along the hinge")).hasValue("48.75");
        assertThat(plain.getByLabel("Low B, along the hinge")).hasValue("");
        plain.context().close();
    }

    @Test
    void another_bench_that_changed_the_same_field_is_told_not_overwritten() throws Exception {
        // The line that tells of others' edits is cut, so that only the save itself can notice.
        page.route("**/live?*", line -> line.fulfill(new Route.FulfillOptions().setStatus(204)));
        page.reload();
        program.post(horn + "/readings", Map.of("seq", "2", "r/CUP_INSIDE/cup.low-b-flat/along the hinge", "48.1"));
        type("Low B♭, along the hinge", "48.9");
        assertThat(told("Low B♭, along the hinge")).containsText("48.1 there, 48.9 here");
        page.reload();
        assertThat(field("Low B♭, along the hinge")).hasValue("48.1");
    }

    private void type(String label, String text) {
        field(label).fill("");
        field(label).focus();
        page.keyboard().type(text);
        page.keyboard().press("Enter");
    }

    private Locator field(String label) {
        return page.getByLabel(label);
    }

    private Locator told(String label) {
        return page.locator("[id='said-" + field(label).getAttribute("id") + "']");
    }
}
