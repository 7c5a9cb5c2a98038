package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A horn joins the archive: which it is, what is seen on it, and what that makes likely. */
final class EvidenceTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Program program;
    private static Browser browser;

    @BeforeAll
    static void start() throws Exception {
        program = Program.start(folder, "--demo");
        browser = Browser.open();
    }

    @AfterAll
    static void stop() {
        browser.close();
        program.close();
    }

    private static Page newHorn(String serial, boolean scripts) {
        return newHorn(serial, scripts, "unknown");
    }

    private static Page newHorn(String serial, boolean scripts, String integrity) {
        Page page = browser.page(1280, 800, ColorScheme.LIGHT, scripts);
        page.navigate(program.address() + "/archive");
        page.getByText("A horn I have looked at").click();
        page.getByLabel("Serial number").fill(serial);
        page.getByLabel("Built").fill("1938~");
        page.getByLabel("The horn is").selectOption(new SelectOption().setLabel(integrity));
        page.getByText("Say what I see on it").click();
        assertThat(page.locator("h1")).hasText("Alto " + serial);
        return page;
    }

    @Test
    void a_horn_is_painted_with_scripts_off_in_one_press_and_moves_the_ruler() {
        Page page = newHorn("41210", false, "original");
        page.getByLabel("Where it is written down").fill("bench book 9, page 2");
        page.locator("#group-lower-stack > summary").click();
        Locator feet = page.locator("[id='stroke-lower-stack.foot']");
        feet.getByLabel("woven wool felt").check();
        page.getByText("Keep what I see").click();
        assertThat(page.locator(".saved").first()).hasText(Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d"));
        page.locator("#group-lower-stack > summary").click();
        assertThat(page.locator("[id='stroke-lower-stack.foot'] .said")).hasText("woven wool felt: 4");
        page.navigate(program.address() + "/archive/place?voice=alto&serial=41207&place=foot.d");
        assertThat(page.locator("[id='w-41210.lower-stack-foot.foot.d']")).containsText("bench book 9, page 2");
        assertThat(page.locator(".st.contested").first()).containsText("contested");
        page.navigate(program.address() + "/archive/history");
        page.locator(".edits li").first().getByRole(AriaRole.BUTTON).click();
        page.navigate(program.address() + "/archive/place?voice=alto&serial=41207&place=foot.d");
        assertThat(page.locator("[id='w-41210.lower-stack-foot.foot.d']")).hasCount(0);
        page.context().close();
    }

    @Test
    void a_place_tapped_on_the_drawing_opens_its_stroke_with_that_place_alone() {
        Page page = newHorn("41211", true);
        page.locator(".canvas .place[data-place='foot.e']").dispatchEvent("click");
        Locator stroke = page.locator("[id='stroke-lower-stack.foot']");
        assertThat(stroke).isVisible();
        assertThat(stroke.locator("input[type=checkbox]:checked")).hasCount(1);
        stroke.getByText("natural cork").click();
        page.getByText("Keep what I see").click();
        assertThat(page.locator(".lead").first()).containsText("1 place looked at");
        page.context().close();
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void what_is_wrong_is_said_at_once_and_nothing_typed_is_lost() {
        Page page = newHorn("41212", false);
        page.locator("#group-lower-stack > summary").click();
        Locator feet = page.locator("[id='stroke-lower-stack.foot']");
        feet.getByLabel("natural cork").check();
        feet.locator("details.more > summary").click();
        feet.getByLabel("At least, mm").fill("1.234,5");
        page.getByText("Keep what I see").click();
        assertThat(page.locator(".troubles")).containsText("two ways");
        assertThat(page.locator("[id='stroke-lower-stack.foot'] input[value='natural cork']"))
                .isChecked();
        page.context().close();
    }

    @Test
    void a_contradiction_is_set_aside_in_writing_and_stays_in_sight() {
        Page page = browser.page(1280, 800, ColorScheme.DARK, false);
        page.navigate(program.address() + "/archive");
        Locator dispute = page.locator(".contests li").filter(new Locator.FilterOptions().setHasText("alto 40911"));
        dispute.getByText("Set it aside").click();
        dispute.getByLabel("Why").fill("two pads were glued in again");
        dispute.getByLabel("Who says so").fill("the bench");
        dispute.getByLabel("When").fill("2026-11");
        dispute.getByText("Keep the reason").click();
        assertThat(page.locator(".plain-list").first()).containsText("two pads were glued in again");
        page.navigate(program.address() + "/archive/place?voice=alto&serial=41207&place=adhesive.d");
        assertThat(page.locator(".st.done, .st.planned").first()).isVisible();
        assertThat(page.locator("tr").filter(new Locator.FilterOptions().setHasText("rubber cement")))
                .containsText("Set aside: two pads were glued in again");
        page.context().close();
    }

    @Test
    void a_year_is_read_off_the_table_and_a_new_row_narrows_its_bracket() {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, false);
        page.navigate(program.address() + "/archive");
        page.getByLabel("Year of serial").fill("41800");
        page.getByText("Read it off").click();
        assertThat(page.locator(".made-in > summary")).hasText("41800: 1938, between 1937 and 1939");
        page.locator(".made-in > summary").click();
        assertThat(page.locator(".made-in")).containsText("40300 is of 1937: works day book, leaf 31 (demo).");
        page.getByText("A serial whose year is written down").click();
        Locator form = page.locator("form[action='/archive/year']");
        form.getByLabel("Serial").fill("42000");
        form.getByLabel("Year").fill("1938");
        form.getByLabel("Where it is written").fill("a letter in the case");
        form.getByText("Keep the row").click();
        page.navigate(program.address() + "/archive/as-built?voice=alto&serial=41800");
        assertThat(page.locator(".made-in > summary")).hasText("Year of this number: 1938, between 1937 and 1938");
        page.navigate(program.address() + "/archive");
        page.getByLabel("Take out the row of 42000").click();
        assertThat(page.getByLabel("Take out the row of 42000")).hasCount(0);
        page.context().close();
    }

    @Test
    void a_decision_with_its_reason_stands_above_the_proposal_until_it_is_taken_back() throws Exception {
        String horn = program.newHorn("tarrant-loe-alto", "41300");
        Page page = browser.page(820, 1180, ColorScheme.LIGHT, false);
        page.navigate(program.address() + horn + "/keep");
        Locator line = page.locator(".keeps li")
                .filter(new Locator.FilterOptions().setHasText("Neck cork"))
                .first();
        line.locator("summary").click();
        line.getByLabel("Do").selectOption("KEEP");
        line.getByLabel("Why").fill("the owner wants the first cork to stay");
        line.getByText("Keep the decision").click();
        Locator decided = page.locator(".keeps li")
                .filter(new Locator.FilterOptions().setHasText("the owner wants the first cork to stay"));
        page.locator("#keep > summary").click();
        assertThat(decided).containsText("Decided:");
        decided.locator("summary").click();
        decided.getByText("Let the proposal hold again").click();
        assertThat(decided).hasCount(0);
        page.context().close();
    }
}
