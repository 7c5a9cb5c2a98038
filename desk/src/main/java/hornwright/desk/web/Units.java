package hornwright.desk.web;

import hornwright.desk.units.LengthUnit;
import hornwright.desk.units.Lengths;
import hornwright.desk.units.Typed;
import hornwright.desk.web.view.UnitChoice;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The unit a bare number is typed in at this browser, kept in a cookie. */
final class Units {
    private static final String COOKIE = "hornwright-unit";
    private static final int A_YEAR = 365 * 24 * 3600;

    private Units() {}

    static LengthUnit of(Context context) {
        String word = context.cookie(COOKIE);
        return Choices.of(LengthUnit.class, word == null ? "" : word.toUpperCase(Locale.ROOT), LengthUnit.MILLIMETRE);
    }

    /** How the unit of a bare number is written. */
    static String symbol(Context context) {
        return of(context).symbol();
    }

    static Typed length(Context context, String typed) {
        return Lengths.read(typed, of(context));
    }

    /** {@code POST /unit}. */
    static void choose(Context context) {
        Cookie cookie = new Cookie(COOKIE, Desk.field(context, "unit"));
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
        Back.to(context, "/");
    }

    static List<UnitChoice> choices(Context context) {
        return Stream.of(LengthUnit.values())
                .map(unit -> new UnitChoice(unit.name().toLowerCase(Locale.ROOT), unit.symbol(), unit == of(context)))
                .toList();
    }
}
