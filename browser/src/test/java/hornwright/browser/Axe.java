package hornwright.browser;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The rules of axe, put into a page once and asked as often as one likes; the library's own way loads them anew for each
 * question. Source of the rules: axe-core as its Playwright library carries it.
 */
final class Axe {
    private static final String RULES = rules();

    private static final String ASK = """
            async only => {
              const found = await axe.run(document, only ? { runOnly: { type: "rule", values: only } } : {});
              return found.violations.map(rule => rule.id + ": " + rule.help + " at "
                + rule.nodes.slice(0, 4).map(node => node.target.join(" ")).join(", "));
            }""";

    private Axe() {}

    /** What stands in the way of somebody who cannot see or use a pointer, by all rules. */
    static List<String> barriers(Page page) {
        return ask(page, null);
    }

    /** Whether letters stand out from what they stand on: all that a change of light can change. */
    static List<String> contrasts(Page page) {
        return ask(page, List.of("color-contrast"));
    }

    @SuppressWarnings("unchecked")
    private static List<String> ask(Page page, @org.jspecify.annotations.Nullable List<String> only) {
        if (!(Boolean) page.evaluate("typeof axe === 'object'")) {
            page.evaluate(RULES);
        }
        return (List<String>) page.evaluate(ASK, only);
    }

    private static String rules() {
        try (InputStream stream = Axe.class.getResourceAsStream("/axe.min.js")) {
            if (stream == null) {
                throw new IllegalStateException("the library of axe lacks its rules");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
