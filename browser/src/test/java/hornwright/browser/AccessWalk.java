package hornwright.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.ArrayList;
import java.util.List;

/**
 * One walk over every page, each loaded once and looked at broad and narrow, by day and by lamp.
 *
 * @param barriers what axe finds
 * @param wide pages that move sideways at 320
 * @param small controls that are less than 44 high
 * @param moving what moves although motion is not wanted
 * @param slow what moves for longer than 200 ms
 */
record AccessWalk(
        List<String> barriers, List<String> wide, List<String> small, List<String> moving, List<String> slow) {
    private static final int NARROW = 320;

    /** The cells of a photograph lie under a pointer that marks the very spot, wherever in them it is. */
    private static final String SMALL = """
            () => [...document.querySelectorAll("a, button, input:not([type=hidden]), select, textarea, summary")]
              .filter(e => e.checkVisibility() && !e.closest("svg") && !e.matches(".skip, .lead a, .cells button"))
              .map(e => [e.closest("label") ?? (e.matches("[type=checkbox], [type=radio]") && e.labels[0] || e), e])
              .filter(([e]) => e.getBoundingClientRect().height < 43.5)
              .map(([e]) => e.outerHTML.slice(0, 120))""";

    private static final String MOVES = """
            most => [...document.querySelectorAll("body *")].filter(e => {
              const look = getComputedStyle(e);
              const long = [...look.transitionDuration.split(","), ...(look.animationName === "none" ? [] : look.animationDuration.split(","))];
              return long.some(time => parseFloat(time) > most);
            }).slice(0, 4).map(e => e.outerHTML.slice(0, 120))""";

    static AccessWalk over(Shown shown, Browser browser) {
        AccessWalk walk = new AccessWalk(
                new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        Page page = browser.page(1280, 800, ColorScheme.LIGHT, true);
        for (Shown.PageOf one : shown.pages()) {
            page.navigate(shown.program().address() + one.path());
            walk.look(page, one.name());
        }
        page.context().close();
        return walk;
    }

    private void look(Page page, String name) {
        tell(barriers, name + " by day", Axe.barriers(page));
        light(page, ColorScheme.DARK);
        tell(barriers, name + " by lamp", Axe.contrasts(page));
        page.setViewportSize(NARROW, 700);
        int width = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
        if (width > NARROW) {
            wide.add(name + " is " + width + " wide");
        }
        tell(barriers, name + " by lamp, narrow", Axe.barriers(page));
        tell(small, name, found(page, SMALL, 0));
        tell(moving, name, found(page, MOVES, 0));
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.NO_PREFERENCE));
        tell(slow, name, found(page, MOVES, 0.2));
        page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        light(page, ColorScheme.LIGHT);
        page.setViewportSize(1280, 800);
    }

    private static void light(Page page, ColorScheme theme) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(theme));
    }

    @SuppressWarnings("unchecked")
    private static List<String> found(Page page, String ask, double most) {
        return (List<String>) page.evaluate(ask, most);
    }

    private static void tell(List<String> all, String where, List<String> found) {
        found.forEach(one -> all.add(where + ": " + one));
    }
}
