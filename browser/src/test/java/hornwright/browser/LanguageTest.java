package hornwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every page in a language whose words are two fifths longer. What templates say is strange there; sentences made in code are not yet. */
final class LanguageTest {
    private static final int PHONE = 390;

    @Test
    void every_page_speaks_the_other_language_and_none_moves_sideways_for_it(@TempDir Path folder) throws Exception {
        Shown shown = Shown.of(Program.startIn("pseudo", folder, "--demo"));
        List<String> wrong = new ArrayList<>();
        try (Browser browser = Browser.open()) {
            Page page = browser.page(PHONE, 844, ColorScheme.LIGHT, true);
            for (Shown.PageOf one : shown.pages()) {
                page.navigate(shown.program().address() + one.path());
                look(page, one.name(), wrong);
            }
            assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("404"));
        } finally {
            shown.program().close();
        }
        assertThat(wrong).isEmpty();
    }

    private static void look(Page page, String name, List<String> wrong) {
        String tag = String.valueOf(page.getAttribute("html", "lang"));
        String help = page.textContent("#help h2");
        if (!tag.equals("en-x-pseudo") || !help.startsWith("[") || !help.endsWith("]")) {
            wrong.add(name + " speaks " + tag + ": " + help);
        }
        int width = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
        if (width > PHONE) {
            wrong.add("%s is %d wide: %s".formatted(name, width, page.evaluate(WIDEST)));
        }
    }

    private static final String WIDEST = """
            () => [...document.querySelectorAll("main *, .top *")].filter(one => one.getBoundingClientRect().right > innerWidth + 1
              && !one.closest(".tray, .slips, .scroll, svg")).slice(0, 3).map(one => one.outerHTML.slice(0, 90)).join(" | ")""";
}
