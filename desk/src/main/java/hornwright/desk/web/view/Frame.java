package hornwright.desk.web.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What stands round every page.
 *
 * @param files the addresses of style, script, htmx and icon
 * @param theme "light", "dark" or "" for the system's own
 * @param here the address of this page, to come back to
 * @param horn the name of the horn; null on the shop's own pages
 * @param tray the pages of this horn
 * @param foot a line at the bottom: when the last edit was kept
 */
public record Frame(
        String title,
        Files files,
        String theme,
        String here,
        String shop,
        @Nullable String horn,
        List<Compartment> tray,
        String foot) {
    public Frame {
        tray = List.copyOf(tray);
    }

    public record Files(String style, String script, String htmx, String icon) {}

    /** One compartment of the tray: a page of this horn and, in words, what lies in it. */
    public record Compartment(String name, String address, String fact, boolean current) {}

    public Frame titled(String other) {
        return new Frame(other, files, theme, here, shop, horn, tray, foot);
    }

    public Frame ofHorn(String name, List<Compartment> pages, String line) {
        return new Frame(title, files, theme, here, shop, name, pages, line);
    }
}
