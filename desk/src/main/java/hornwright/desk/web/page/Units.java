package hornwright.desk.web.page;

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
import org.jspecify.annotations.Nullable;

/** The unit a bare number is typed in at this browser, kept in a cookie. */
public final class Units {
    private static final String COOKIE = "hornwright-unit";
    private static final int A_YEAR = 365 * 24 * 3600;

    private Units() {}

    public static LengthUnit of(Context context) {
        String word = context.cookie(COOKIE);
        return Choices.of(LengthUnit.class, word == null ? "" : word.toUpperCase(Locale.ROOT), LengthUnit.MILLIMETRE);
    }

    /** How the unit of a bare number is written. */
    public static String symbol(Context context) {
        return of(context).symbol();
    }

    public static Typed length(Context context, String typed) {
        return Lengths.read(typed, of(context));
    }

    /** {@code POST /unit}. */
    public static void choose(Context context) {
        Cookie cookie = new Cookie(COOKIE, Desk.field(context, "unit"));
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
        Back.to(context, "/");
    }

    public static List<UnitChoice> choices(Context context) {
        return Stream.of(LengthUnit.values())
                .map(unit -> new UnitChoice(unit.name().toLowerCase(Locale.ROOT), unit.symbol(), unit == of(context)))
                .toList();
    }

    /** What was typed as a length of its own, or nothing. */
    public static @Nullable Double millimetres(Typed typed) {
        return typed instanceof Typed.Amount amount && amount.value().signum() > 0
                ? Double.valueOf(amount.value().doubleValue())
                : null;
    }
}
