package hornwright.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** A Chromium of the machine. It remembers everything a console said that a page should not say. */
final class Browser implements AutoCloseable {
    /** A form that is refused with a sentence is the program at work; browsers tell it to their console all the same. */
    private static final Pattern REFUSED = Pattern.compile("status of (409|422) ");

    private static final List<String> SWITCHES = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    static {
        // A machine that does other work beside the tests is slow, not wrong.
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
    }

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser chromium;
    private final List<String> complaints = new ArrayList<>();

    private Browser(Playwright playwright, com.microsoft.playwright.Browser chromium) {
        this.playwright = playwright;
        this.chromium = chromium;
    }

    static Browser open() {
        return open(List.of());
    }

    /** With further switches, as for a microphone that is a file. */
    static Browser open(List<String> switches) {
        List<String> all = new ArrayList<>(SWITCHES);
        all.addAll(switches);
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        String path = System.getenv().getOrDefault("HORNWRIGHT_CHROMIUM", "/usr/bin/chromium");
        return new Browser(
                playwright,
                playwright
                        .chromium()
                        .launch(new BrowserType.LaunchOptions()
                                .setExecutablePath(Path.of(path))
                                .setHeadless(true)
                                .setArgs(all)));
    }

    /** A page of that size, with scripts on or off. */
    Page page(int width, int height, ColorScheme theme, boolean scripts) {
        BrowserContext context = chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setColorScheme(theme)
                .setReducedMotion(ReducedMotion.REDUCE)
                .setJavaScriptEnabled(scripts));
        context.setDefaultTimeout(30_000);
        Page page = context.newPage();
        page.onConsoleMessage(message -> {
            if (List.of("error", "warning").contains(message.type())
                    && !REFUSED.matcher(message.text()).find()) {
                complaints.add(page.url() + ": " + message.text());
            }
        });
        page.onPageError(error -> complaints.add(page.url() + ": " + error));
        return page;
    }

    Page page() {
        return page(1280, 800, ColorScheme.LIGHT, true);
    }

    /** Errors, warnings and policy violations of all pages so far. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** What stands in the way of somebody who cannot see or use a pointer, by the rules of axe. */
    static List<String> barriers(Page page) {
        return Axe.barriers(page);
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }
}
