package hornwright.desk.web.page;

import hornwright.desk.message.Messages;
import hornwright.desk.web.view.Tour;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The tour of a first run: five pages that say what there is to see on them. It covers nothing and locks nothing; how far
 * it has come is kept by the browser, so that it can be left and gone on with.
 */
public final class TourStops {
    private static final String COOKIE = "hornwright-tour";
    private static final int A_YEAR = 365 * 24 * 3600;

    /** The last words of the addresses of the stops under {@code /horn/{id}}; the first is the shelf. */
    private static final List<String> PAGES = List.of("/", "", "/measure", "/plan", "/work");

    private static final Tour NOTHING = new Tour(0, false, "", "", "", "", "", 0);

    private TourStops() {}

    public static Tour at(Context context, Messages texts) {
        String path = context.path();
        return at(String.valueOf(context.cookie(COOKIE)), path, texts);
    }

    /** @param kept what the browser keeps: a stop, a stop it was left at with a minus before it, or something else */
    public static Tour at(String kept, String path, Messages texts) {
        if (kept.matches("-[1-5]")) {
            return new Tour(0, false, "", "", "", "", "", Integer.parseInt(kept.substring(1)));
        }
        if (kept.matches("[1-5]")) {
            String horn = horn(path);
            int here = PAGES.indexOf(horn.isEmpty() ? path : path.substring(horn.length()));
            return here < 0 ? elsewhere(Integer.parseInt(kept), horn, texts) : here(here + 1, horn, texts);
        }
        return path.equals("/") && !kept.equals("done") ? new Tour(0, true, "", "", "", "", "", 0) : NOTHING;
    }

    /** {@code POST /tour}: keeps where the tour stands and goes to where the form says. */
    public static void choose(Context context) {
        String stop = Desk.field(context, "stop");
        Cookie cookie = new Cookie(COOKIE, stop.matches("-?[1-5]") ? stop : "done");
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
        Back.to(context, "/");
    }

    private static Tour here(int stop, String horn, Messages texts) {
        boolean last = stop == PAGES.size();
        return new Tour(
                stop,
                false,
                texts.say("tour." + stop + ".words"),
                texts.say("tour." + stop + ".page"),
                "",
                last ? "" : texts.say("tour." + (stop + 1) + ".page"),
                last || horn.isEmpty() ? "" : horn + PAGES.get(stop),
                0);
    }

    private static Tour elsewhere(int stop, String horn, Messages texts) {
        String there = stop == 1 || horn.isEmpty() ? "/" : horn + PAGES.get(stop - 1);
        return new Tour(stop, false, "", texts.say("tour." + stop + ".page"), there, "", "", 0);
    }

    /** The address of the horn a path lies under; empty on a page of the shop. */
    private static String horn(String path) {
        String[] words = path.split("/");
        @Nullable String id = words.length > 2 && words[1].equals("horn") ? words[2] : null;
        return id == null ? "" : "/horn/" + id;
    }
}
