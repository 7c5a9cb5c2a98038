package hornwright.desk.web.page;

import io.javalin.http.Context;

/** Whether a page that is already open asks for a part of itself, rather than a person for a page. */
public final class Live {
    private Live() {}

    public static boolean asked(Context context) {
        return context.header("HX-Request") != null || context.header("X-Live") != null;
    }
}
