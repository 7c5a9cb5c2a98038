package hornwright.desk.web.page;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;

/** Light or dark: the system's choice until the person makes one, which a cookie keeps so that no page flashes. */
public enum Theme {
    SYSTEM(""),
    LIGHT("light"),
    DARK("dark");

    private static final String COOKIE = "hornwright-theme";
    private static final int A_YEAR = 365 * 24 * 3600;

    private final String word;

    Theme(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    public static Theme of(Context context) {
        return named(context.cookie(COOKIE));
    }

    /** {@code POST /theme}: keeps the choice and goes back to the page it came from. */
    public static void choose(Context context) {
        Cookie cookie = new Cookie(COOKIE, named(context.formParam("theme")).word);
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
        Back.to(context, "/");
    }

    private static Theme named(@org.jspecify.annotations.Nullable String word) {
        for (Theme theme : values()) {
            if (theme.word.equals(word)) {
                return theme;
            }
        }
        return SYSTEM;
    }
}
