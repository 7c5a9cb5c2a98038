package hornwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page at the size of a bench screen, a tablet held upright and a phone, by day and by lamp. With {@code
 * -Dhornwright.screens=DIR} it leaves a picture of each.
 */
final class ScreensTest {
    private record Size(String name, int width, int height) {}

    private static final List<Size> SIZES =
            List.of(new Size("bench", 1280, 800), new Size("tablet", 820, 1180), new Size("phone", 390, 844));

    @TempDir
    @SuppressWarnings("NullAway.Init")
    static Path folder;

    private static Shown shown;
    private static Browser browser;

    @BeforeAll
    static void open() throws Exception {
        shown = Shown.in(folder);
        browser = Browser.open();
    }

    @AfterAll
    static void close() {
        browser.close();
        shown.program().close();
    }

    @Test
    void no_page_is_wider_than_its_screen_and_none_complains() {
        List<String> wide = new ArrayList<>();
        for (Size size : SIZES) {
            for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                Page page = browser.page(size.width(), size.height(), theme, true);
                for (Shown.PageOf one : shown.pages()) {
                    page.navigate(shown.program().address() + one.path());
                    int width = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
                    if (width > size.width()) {
                        wide.add("%s at %d is %d wide".formatted(one.name(), size.width(), width));
                    }
                    picture(
                            page,
                            "%s-%s-%s.png"
                                    .formatted(
                                            one.name(),
                                            size.name(),
                                            theme.name().toLowerCase(java.util.Locale.ROOT)));
                }
                page.context().close();
            }
        }
        assertThat(wide).isEmpty();
        // The refusal is asked for on purpose; a browser tells every 404 to its console.
        assertThat(browser.complaints()).allMatch(complaint -> complaint.contains("404"));
    }

    private static void picture(Page page, String name) {
        String target = System.getProperty("hornwright.screens", "");
        if (!target.isEmpty()) {
            page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(target, name)));
        }
    }
}
