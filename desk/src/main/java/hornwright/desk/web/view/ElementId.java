package hornwright.desk.web.view;

import java.util.Locale;

/** How an element of a page is named, so that a link, a script and a label find the same one. */
public final class ElementId {
    private ElementId() {}

    public static String row(String of) {
        return "row-" + plain(of);
    }

    public static String field(String kind, String of, String point) {
        return "in-" + plain(kind + "-" + of + "-" + point);
    }

    /** Letters, digits and hyphens, which need no escaping in an address or a script. */
    public static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
