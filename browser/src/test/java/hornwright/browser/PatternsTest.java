package hornwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The patterns of docs/guide/patterns.md where they live: each is found on its page. With {@code
 * -Dhornwright.screens=DIR} a picture of each is cut out into {@code DIR/patterns}.
 */
final class PatternsTest {
    /** @param press what to press before it is there; empty for nothing */
    private record Specimen(String name, String path, String press, String selector) {
        Specimen(String name, String path, String selector) {
            this(name, path, "", selector);
        }
    }

    private static final List<Specimen> OF_A_HORN = List.of(
            new Specimen("go", "/survey", ".next .go"),
            new Specimen("second", "/work", ".clock button"),
            new Specimen("plain", "/measure", ".unit"),
            new Specimen("plate", "/point", ".four"),
            new Specimen("swab", "/survey", ".palette"),
            new Specimen("paper", "/plan", ".paper"),
            new Specimen("fold", "/survey", ".more > summary"),
            new Specimen("field", "/arrival", "#who .field"),
            new Specimen("reading", "/measure", "td.typed"),
            new Specimen("saved", "/measure", "td.typed .saved"),
            new Specimen("why", "/plan", ".why"),
            new Specimen("because", "/plan", ".why", "#because"),
            new Specimen("next", "/plan", ".next"),
            new Specimen("tray", "/plan", ".tray"),
            new Specimen("slips", "/measure", ".slips"),
            new Specimen("help", "/neck#help", ".aid"),
            new Specimen("tour", "/measure", ".tour"),
            new Specimen("facts", "?place=pad.low-b", ".facts"),
            new Specimen("mind", "/plan", ".mind"),
            new Specimen("steps", "/work", ".steps.big"),
            new Specimen("bags", "/trays", ".bags li"),
            new Specimen("edits", "/history", ".edits"),
            new Specimen("done", "/closing", ".st.done >> visible=true"),
            new Specimen("planned", "/work", ".st.planned >> visible=true"),
            new Specimen("missing", "/leaks", ".st.missing >> visible=true"),
            new Specimen("stale", "/fit", ".st.stale >> visible=true"),
            new Specimen("legend", "?layer=as-built", ".legend"),
            new Specimen("needle", "/feel", ".touches li"),
            new Specimen("ruler", "/as-built", ".ruler"));

    private static final List<Specimen> OF_THE_SHOP = List.of(
            new Specimen("plates", "/", ".new-horn summary", ".plates"),
            new Specimen("contested", "/archive", ".st.contested >> visible=true"),
            new Specimen("ruled", "/stock", ".ruled"),
            new Specimen("stand", "/", ".shelf li"));

    private static final double TALLEST = 360;

    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    @Test
    void every_pattern_is_found_where_it_lives() throws Exception {
        Shown shown = Shown.in(folder);
        List<String> lost = new ArrayList<>();
        try (Browser browser = Browser.open()) {
            Page page = browser.page(1080, 800, ColorScheme.LIGHT, true);
            String home = shown.program().address();
            page.context()
                    .addCookies(
                            List.of(new com.microsoft.playwright.options.Cookie("hornwright-tour", "3").setUrl(home)));
            OF_A_HORN.forEach(one -> look(page, home + shown.horn(), one, lost));
            OF_THE_SHOP.forEach(one -> look(page, home, one, lost));
            fault(page, home + shown.horn(), lost);
            troubles(browser.page(1080, 800, ColorScheme.LIGHT, false), home + shown.horn(), lost);
        } finally {
            shown.program().close();
        }
        assertThat(lost).isEmpty();
    }

    private static void fault(Page page, String horn, List<String> lost) {
        page.navigate(horn + "/measure?sheet=depths");
        Locator field = page.locator("td.typed input").first();
        field.fill("1,234.5");
        field.press("Tab");
        page.locator("td.typed .fault").first().waitFor();
        cut(page, "fault", "td.typed:has(.fault)", lost);
    }

    /** Without scripts all of it comes at once. */
    private static void troubles(Page page, String horn, List<String> lost) {
        page.navigate(horn + "/measure?sheet=depths");
        page.locator("td.typed input").first().fill("1,234.5");
        page.locator("td.typed input").nth(1).fill("4.6 ells");
        page.locator(".grid-end .go").click();
        cut(page, "troubles", ".troubles", lost);
    }

    private static void look(Page page, String home, Specimen one, List<String> lost) {
        page.navigate(home + one.path());
        if (!one.press().isEmpty()) {
            page.locator(one.press()).first().click();
        }
        cut(page, one.name(), one.selector(), lost);
    }

    private static void cut(Page page, String name, String selector, List<String> lost) {
        Locator specimen = page.locator(selector).first();
        try {
            specimen.waitFor(new Locator.WaitForOptions().setTimeout(4_000));
        } catch (com.microsoft.playwright.TimeoutError gone) {
            lost.add(name + " (" + selector + ") at " + page.url());
            return;
        }
        String target = System.getProperty("hornwright.screens", "");
        if (!target.isEmpty()) {
            Path picture = Path.of(target, "patterns", name + ".png");
            Path.of(target, "patterns").toFile().mkdirs();
            page.evaluate("scrollTo(0, 0)");
            BoundingBox box = specimen.boundingBox();
            page.screenshot(new Page.ScreenshotOptions()
                    .setPath(picture)
                    .setFullPage(true)
                    .setClip(box.x, box.y, box.width, Math.min(box.height, TALLEST)));
            assertThat(Files.exists(picture)).isTrue();
        }
    }
}
