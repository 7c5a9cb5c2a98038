package hornwright.desk.web;

import io.javalin.http.Context;

/** Whether a page that is already open asks for a part of itself, rather than a person for a page. */
final class Live {
    private Live() {}

    static boolean asked(Context context) {
        return context.header("HX-Request") != null || context.header("X-Live") != null;
    }
}
