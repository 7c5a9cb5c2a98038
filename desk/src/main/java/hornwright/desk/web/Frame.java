package hornwright.desk.web;

import io.javalin.http.Context;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands round every page: its title, the files it needs, the theme, and for a horn its tray of pages. */
public record Frame(
        String title,
        String style,
        String script,
        String htmx,
        String icon,
        String theme,
        String here,
        String shop,
        @Nullable String horn,
        List<Compartment> tray,
        String foot) {

    /** One compartment of the tray: a page of this horn and, in words, what lies in it. */
    public record Compartment(String name, String address, String fact, boolean current) {}

    static Frame of(Context context, Assets assets, String title) {
        return new Frame(
                title,
                assets.style(),
                assets.script(),
                assets.htmx(),
                assets.icon(),
                Theme.of(context).word(),
                context.path(),
                "",
                null,
                List.of(),
                "");
    }

    Frame ofShop(String name) {
        return new Frame(title, style, script, htmx, icon, theme, here, name, horn, tray, foot);
    }

    Frame ofHorn(String name, List<Compartment> pages, String state) {
        return new Frame(title, style, script, htmx, icon, theme, here, shop, name, pages, state);
    }
}
