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

/** One point at a time, by caliper and pedal. */
final class PointTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @SuppressWarnings("NullAway.Init")
    private Program program;

    @SuppressWarnings("NullAway.Init")
    private Browser browser;

    @SuppressWarnings("NullAway.Init")
    private String horn;

    @SuppressWarnings("NullAway.Init")
    private Page page;

    @BeforeEach
    void open() throws Exception {
        program = Program.start(folder, "--empty");
        browser = Browser.open();
        horn = program.newHorn("tarrant-loe-alto", "41207");
        page = browser.page();
        page.navigate(program.address() + horn + "/point?sheet=cups");
    }

    @AfterEach
    void close() {
        browser.close();
        program.close();
    }

    @Test
    void forty_points_are_taken_without_touching_the_screen() throws Exception {
        String[] sizes = {"48.75", "47.40", "39.65", "40.94", "33.23", "35.05", "32.48", "21.90", "30.70", "29.05"};
        for (int n = 0; n < 40; n++) {
            assertThat(page.locator("#point .num").first()).containsText((n + 1) + " of 48");
            burst(sizes[Math.min(n / 2, sizes.length - 1)]);
            if (page.locator("#point .fault").count() > 0) {
                burst(sizes[Math.min(n / 2, sizes.length - 1)]);
            }
        }
        assertThat(page.locator("#point .num").first()).containsText("41 of 48");
        Assertions.assertThat(program.get(horn + "/measure?sheet=cups")).contains("value=\"48.75\"", "value=\"35.05\"");
        Assertions.assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void after_a_wrong_burst_one_key_gives_back_value_and_place() {
        burst("48.75");
        page.keyboard().press("PageDown");
        assertThat(number()).containsText("3 of 48");
        page.keyboard().press("PageUp");
        assertThat(number()).containsText("1 of 48");
        assertThat(value()).hasValue("");
        burst("48.71");
        assertThat(number()).containsText("2 of 48");
        page.navigate(program.address() + horn + "/point?sheet=cups&n=0");
        assertThat(value()).hasValue("48.71");
        burst("48.11");
        page.keyboard().press("PageUp");
        assertThat(number()).containsText("1 of 48");
        assertThat(value()).hasValue("48.71");
    }

    @Test
    void a_burst_replaces_what_was_begun_by_hand_and_arrives_though_a_plate_has_the_focus() {
        page.keyboard().type("7");
        page.waitForTimeout(200);
        burst("48.75");
        assertThat(number()).containsText("2 of 48");
        page.getByText("Skip").focus();
        burst("48.52");
        assertThat(number()).containsText("3 of 48");
        page.navigate(program.address() + horn + "/measure?sheet=cups");
        assertThat(page.getByLabel("Low B♭, along the hinge")).hasValue("48.75");
        assertThat(page.getByLabel("Low B♭, across")).hasValue("48.52");
    }

    @Test
    void a_slip_of_the_unit_and_a_value_far_off_are_asked_about_and_not_kept() {
        burst("1.919");
        assertThat(page.locator("#point .fault")).containsText("Inch or millimetre?");
        burst("28.75");
        assertThat(page.locator("#point .fault")).containsText("Measure once more");
        assertThat(number()).containsText("1 of 48");
        page.navigate(program.address() + horn + "/measure?sheet=cups");
        assertThat(page.getByLabel("Low B♭, along the hinge")).hasValue("");
    }

    @Test
    void a_caliper_on_a_french_keyboard_is_taught_by_three_readings() {
        page.navigate(program.address() + "/caliper");
        String[][] samples = {{"4.07", "':àè"}, {"17.38", "&è:\"_"}, {"48.92", "'_:çé"}};
        for (int n = 1; n <= 3; n++) {
            page.locator("#shown" + n).fill(samples[n - 1][0]);
            page.locator("#arrived" + n).fill(samples[n - 1][1]);
        }
        page.getByText("Learn it").click();
        assertThat(page.locator("main")).containsText("French keyboard");
        page.navigate(program.address() + horn + "/point?sheet=cups");
        burst("'_:(é");
        assertThat(number()).containsText("2 of 48");
        page.navigate(program.address() + horn + "/measure?sheet=cups");
        assertThat(page.getByLabel("Low B♭, along the hinge")).hasValue(Pattern.compile("48\\.52"));
    }

    @Test
    void with_scripts_off_the_plates_do_the_same() {
        Page plain = browser.page(390, 844, ColorScheme.LIGHT, false);
        plain.navigate(program.address() + horn + "/point?sheet=cups");
        plain.locator("#value").fill("48.75");
        plain.locator("#value").press("Enter");
        assertThat(plain.locator("#point .num").first()).containsText("2 of 48");
        plain.locator("[value=back]").click();
        assertThat(plain.locator("#point .num").first()).containsText("1 of 48");
        assertThat(plain.locator("#value")).hasValue("");
        plain.context().close();
    }

    /** As a caliper types: no pause between the keys, Enter at the end; each key does what the page lets it do. */
    private void burst(String text) {
        String before = page.locator("#point input[name=key]").getAttribute("value");
        page.evaluate("""
                text => {
                  for (const key of [...text, "Enter"]) {
                    const on = document.activeElement ?? document.body;
                    const event = new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true });
                    if (on.dispatchEvent(event) && key.length === 1) document.execCommand("insertText", false, key);
                  }
                }""", text);
        page.waitForFunction("before => document.querySelector('#point input[name=key]').value !== before", before);
    }

    private Locator number() {
        return page.locator("#point .num").first();
    }

    private Locator value() {
        return page.locator("#value");
    }
}
