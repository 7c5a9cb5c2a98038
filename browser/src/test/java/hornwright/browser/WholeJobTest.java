package hornwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A horn from the door to its owner, and not once a hand on the mouse. Source: WCAG 2.2, 2.1.1 and 2.4.3. */
final class WholeJobTest {
    /** More stops than this before what one wants is not a way a person goes. */
    private static final int FAR = 90;

    private static final Pattern SAVED = Pattern.compile("saved \\d\\d:\\d\\d:\\d\\d");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    @Test
    void the_whole_job_from_arrival_to_hand_over_by_keyboard_alone() throws Exception {
        try (Program program = Program.start(folder, "--empty");
                Browser browser = Browser.open()) {
            Page page = browser.page();
            String horn = takeIn(page, program.address());
            String home = program.address() + horn;
            arrive(page, home);
            see(page, home);
            measure(page, home);
            ask(page, home);
            place(page, home);
            work(page, home);
            find(page, home);
            takeBack(page, home);
            handOver(page, home);
            Assertions.assertThat(browser.complaints()).isEmpty();
        }
    }

    private static String takeIn(Page page, String address) {
        page.navigate(address + "/");
        reach(page, "#new-horn input[name=pattern]");
        page.keyboard().press("Space");
        reach(page, "#serial");
        page.keyboard().type("41207");
        page.keyboard().press("Enter");
        assertThat(page).hasURL(Pattern.compile(".*/horn/q-0001.*"));
        return "/horn/q-0001";
    }

    private static void arrive(Page page, String home) {
        page.navigate(home + "/arrival");
        reach(page, "#owner");
        page.keyboard().type("Harbour Town Band");
        reach(page, "#use");
        page.keyboard().type("working");
        reach(page, "#who button");
        page.keyboard().press("Enter");
        assertThat(page.locator("#owner")).hasValue("Harbour Town Band");
        assertThat(page.locator("#use")).hasValue("WORKING");
        reach(page, "#shot-front");
        page.keyboard().press("Space");
        assertThat(page.locator("#photographs")).containsText("1 of 30 taken");
    }

    private static void see(Page page, String home) {
        page.navigate(home + "/survey");
        reach(page, ".stroke .palette input");
        page.keyboard().press("Space");
        page.keyboard().press("Enter");
        assertThat(page.locator(".stroke .saved").first()).hasText(SAVED);
    }

    private static void measure(Page page, String home) {
        page.navigate(home + "/point?sheet=heights");
        page.keyboard().type("11.3");
        page.keyboard().press("Enter");
        assertThat(page.locator("#point .num").first()).containsText("2 of 24");
        page.navigate(home + "/measure?sheet=cups");
        reach(page, "form.grid input[type=text]");
        page.keyboard().type("48.75");
        page.keyboard().press("Enter");
        page.keyboard().type("48.52");
        page.keyboard().press("Enter");
        assertThat(page.locator("[id='row-cup-low-b-flat-diameter']")).containsText("48.5");
    }

    private static void ask(Page page, String home) {
        page.navigate(home + "/plan");
        reach(page, "table .why");
        page.keyboard().press("Enter");
        assertThat(page.locator("#because")).containsText("Because");
    }

    private static void place(Page page, String home) {
        page.navigate(home);
        reach(page, "svg.unrolled .place");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("Enter");
        assertThat(page.locator("#place h2").first()).isVisible();
    }

    private static void work(Page page, String home) {
        page.navigate(home + "/work");
        reach(page, ".steps .go");
        page.keyboard().press("Enter");
        assertThat(page.locator(".saved").first()).hasText(SAVED);
    }

    private static void find(Page page, String home) {
        page.navigate(home + "/plan");
        reach(page, "#seek");
        page.keyboard().type("g# foot");
        page.keyboard().press("Enter");
        assertThat(page.locator("#hits li").first()).containsText("G♯ foot");
        reach(page, "#hits a");
        page.keyboard().press("Enter");
        assertThat(page.locator("#place h2").first()).containsText("G♯ foot");
    }

    private static void takeBack(Page page, String home) {
        page.navigate(home + "/history");
        reach(page, ".edits button");
        page.keyboard().press("Enter");
        assertThat(page.locator(".edits .undone")).hasCount(1);
    }

    private static void handOver(Page page, String home) {
        page.navigate(home + "/handover");
        assertThat(page.locator("main")).containsText("What cannot be undone");
        reach(page, ".signing .go");
        page.keyboard().press("Enter");
        assertThat(page.locator(".signing .done")).containsText("handed over");
        Locator paper = page.locator(".signing a[href*='signed']");
        Assertions.assertThat(page.request().get(home + "/handover/signed.pdf").headers())
                .containsEntry("content-type", "application/pdf");
        assertThat(paper).hasAttribute("href", Pattern.compile(".*/handover/signed\\.pdf"));
        assertThat(page.locator(".tray")).containsText("handed over");
    }

    /** Goes on with Tab until something of that sort has the focus. */
    private static void reach(Page page, String wanted) {
        for (int stops = 0; stops < FAR; stops++) {
            if ((Boolean) page.evaluate("wanted => document.activeElement?.matches(wanted) ?? false", wanted)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("%s is not reached by %d stops on %s".formatted(wanted, FAR, page.url()));
    }
}
