package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
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
        program = Program.start(folder, "--empty");
        browser = Browser.open();
        horn = program.newHorn("tarrant-loe-alto", "41207");
    }

    @AfterEach
    void close() {
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

    @Test
    void a_rule_set_elsewhere_reaches_the_readings_it_governs_and_its_own_page() throws Exception {
        Page one = measuring();
        type(one, ALONG, "48.75");
        type(one, ACROSS, "48.52");
        assertThat(one.locator("[id='row-cup-low-b-flat-diameter']")).containsText("48.5");
        Page rules = page("/rules");
        program.post("/rules", Map.of("rule", "pad.allowance_mm", "value", "1", "key", "k1", "seq", "0"));
        assertThat(one.locator("[id='row-cup-low-b-flat-diameter']")).containsText("49.5");
        assertThat(rules.locator("[id='v-pad.allowance_mm']")).hasValue("1");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_rule_two_windows_write_stands_twice_until_one_is_chosen() throws Exception {
        Page rules = page("/rules");
        Locator mine = rules.locator("[id='v-pad.allowance_mm']");
        mine.fill("0.5");
        program.post("/rules", Map.of("rule", "pad.allowance_mm", "value", "-0.5", "key", "k1", "seq", "0"));
        Locator both = rules.locator("[id='pad.allowance_mm'] .both");
        assertThat(both).containsText("0.5 here");
        assertThat(both).containsText("0.5 there");
        assertThat(mine).hasValue("0.5");
        both.getByText("Keep 0.5", new Locator.GetByTextOptions().setExact(true))
                .click();
        mine.press("Enter");
        assertThat(rules.locator("h1")).hasText("Rules of the shop");
        assertThat(mine).hasValue("0.5");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void goods_evidence_and_horns_of_another_window_appear_on_their_pages() throws Exception {
        Page stock = page("/stock");
        Page archive = page("/archive");
        Page shelf = page("/");
        program.post(
                "/stock",
                Map.of("kind", "PAD", "material", "kid leather", "diameter", "48.5", "count", "3", "key", "k1"));
        program.post("/archive/witness", Map.of("serial", "40111", "voice", "ALTO", "key", "k2"));
        program.newHorn("tarrant-loe-tenor", "43118");
        assertThat(stock.locator(".ruled")).containsText("kid leather");
        assertThat(archive.locator(".witnesses")).containsText("40111");
        assertThat(shelf.locator(".shelf")).containsText("43118");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    private Page page(String path) {
        Page page = browser.page();
        page.navigate(program.address() + path);
        return page;
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
