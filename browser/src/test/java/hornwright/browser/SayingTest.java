package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person says of a horn, by tap and by plain form, and how it is taken back. */
final class SayingTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Program program;
    private static Browser browser;

    private String horn = "";

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
        horn = program.newHorn("tarrant-loe-alto", "41207");
    }

    @Test
    void one_tap_paints_a_group_and_one_press_takes_it_back() {
        Page page = browser.page();
        page.navigate(program.address() + horn + "/survey");
        Locator pads = page.locator("#stroke-bell-pad");
        pads.getByText("synthetic felt").click();
        assertThat(pads.locator(".saved")).hasText(Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d"));
        assertThat(pads.locator(".said")).containsText("mostly synthetic felt");
        page.navigate(program.address() + horn + "/history");
        page.locator(".edits li").first().getByRole(AriaRole.BUTTON).click();
        assertThat(page.locator(".edits li.undone")).hasCount(1);
        page.navigate(program.address() + horn + "/survey");
        assertThat(page.locator("#stroke-bell-pad .said")).isEmpty();
        page.context().close();
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_group_is_painted_with_scripts_off() {
        Page page = browser.page(820, 1180, ColorScheme.DARK, false);
        page.navigate(program.address() + horn + "/survey");
        Locator feet = page.locator("#stroke-lower-stack-foot");
        feet.getByLabel("natural cork").check();
        feet.getByText("Paint").click();
        assertThat(page.locator("#stroke-lower-stack-foot .said")).containsText("mostly natural cork");
        page.context().close();
    }

    @Test
    void the_survey_does_not_tell_what_the_factory_fitted() {
        Page page = browser.page();
        page.navigate(program.address() + horn + "/survey");
        assertThat(page.locator(".palette :checked")).hasCount(0);
        Assertions.assertThat(page.locator("main").innerText()).doesNotContain("as built");
        page.context().close();
    }

    @Test
    void a_place_is_said_to_be_otherwise_than_its_group() {
        Page page = browser.page();
        page.navigate(program.address() + horn + "?place=pad.low-b");
        page.getByText("Say what is here").click();
        page.getByLabel("or in other words").fill("fish skin over felt");
        page.getByLabel("Condition").selectOption("TORN");
        page.getByText("Keep the finding").click();
        assertThat(page.locator("#place .facts")).containsText("fish skin over felt, torn");
        page.context().close();
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_thickness_nobody_can_read_is_refused_beside_its_field_and_nothing_is_kept() {
        Page page = browser.page();
        page.navigate(program.address() + horn + "?place=pad.low-b");
        page.getByText("Say what is here").click();
        page.getByLabel(Pattern.compile("^Thickness")).fill("thick");
        page.getByText("Keep the finding").click();
        assertThat(page.locator("#place .fault")).containsText("no length");
        assertThat(page.getByLabel(Pattern.compile("^Thickness"))).hasValue("thick");
        assertThat(page.locator("#place .facts")).containsText("nobody has looked yet");
        page.context().close();
    }

    @Test
    void a_rule_is_made_the_shops_own_and_put_back() {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, false);
        page.navigate(program.address() + "/rules");
        Locator rule = page.locator("[id='pad.step_mm']");
        rule.getByRole(AriaRole.TEXTBOX).fill("0,25");
        rule.getByText("Set", new Locator.GetByTextOptions().setExact(true)).click();
        assertThat(rule).containsText("set by this shop");
        rule.getByText("As it came").click();
        assertThat(rule).containsText("typical");
        rule.getByRole(AriaRole.TEXTBOX).fill("7");
        rule.getByText("Set", new Locator.GetByTextOptions().setExact(true)).click();
        assertThat(rule.locator(".fault")).containsText("It must lie between");
        page.context().close();
    }

    @Test
    void goods_are_counted_again_and_a_count_that_is_none_is_refused() {
        Page page = browser.page(390, 844, ColorScheme.LIGHT, false);
        page.navigate(program.address() + "/stock");
        page.getByLabel("Material").fill("natural cork");
        page.getByLabel("Kind").selectOption("CORK_SHEET");
        page.getByLabel(Pattern.compile("^Thickness")).fill("1/16");
        page.getByLabel("Count", new Page.GetByLabelOptions().setExact(true)).fill("two");
        page.getByText("Put on the shelf", new Page.GetByTextOptions().setExact(true))
                .click();
        assertThat(page.locator(".troubles")).containsText("whole number");
        page.getByLabel("Count", new Page.GetByLabelOptions().setExact(true)).fill("2");
        page.getByText("Put on the shelf", new Page.GetByTextOptions().setExact(true))
                .click();
        assertThat(page.locator("main")).containsText("1.59 mm");
        page.context().close();
    }
}
