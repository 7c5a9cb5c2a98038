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
 * @param hornId its id, to look through its places; empty on the shop's own pages
 * @param tray the compartments of this horn or, on the shop's own pages, of the shop
 * @param sheets the sheets of the compartment that is open; empty when it has only one
 * @param history where every edit of this horn is told; empty on the shop's own pages
 * @param live where further edits are told as they come; empty when this page was not asked for but posted
 * @param help what this page is for, in plain words
 * @param tour the stop of the tour this page shows, if any
 * @param foot a line at the bottom: when the last edit was kept
 */
public record Frame(
        String title,
        Files files,
        String theme,
        String here,
        String shop,
        @Nullable String horn,
        String hornId,
        List<Compartment> tray,
        List<Compartment> sheets,
        String history,
        String live,
        Help help,
        Tour tour,
        String foot) {
    public Frame {
        tray = List.copyOf(tray);
        sheets = List.copyOf(sheets);
    }

    public record Files(String style, String script, String htmx, String icon) {}

    /** One compartment or sheet of the tray: where it leads and, in words, what lies in it. */
    public record Compartment(String name, String address, String fact, boolean current) {}

    public Frame titled(String other) {
        return new Frame(other, files, theme, here, shop, horn, hornId, tray, sheets, history, live, help, tour, foot);
    }

    public Frame toldAt(String edits) {
        return new Frame(title, files, theme, here, shop, horn, hornId, tray, sheets, history, edits, help, tour, foot);
    }

    public Frame ofHorn(String name, String id, String told, String edits, String line) {
        return new Frame(title, files, theme, here, shop, name, id, tray, sheets, told, edits, help, tour, line);
    }

    public Frame with(List<Compartment> compartments, List<Compartment> open) {
        return new Frame(
                title, files, theme, here, shop, horn, hornId, compartments, open, history, live, help, tour, foot);
    }
}
