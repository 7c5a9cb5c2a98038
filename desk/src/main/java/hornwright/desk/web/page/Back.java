package hornwright.desk.web.page;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.regex.Pattern;

/** Sends a browser back to a page of this program after a form, so that loading again does not post again. */
public final class Back {
    /** A path of our own: one slash, then no second one and no backslash that a browser would take for it. */
    private static final Pattern OWN = Pattern.compile("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\]]*");

    private Back() {}

    /** To the address in the form's field {@code back} when it is one of ours, else to {@code otherwise}. */
    public static void to(Context context, String otherwise) {
        String asked = context.formParam("back");
        context.redirect(asked != null && OWN.matcher(asked).matches() ? asked : otherwise, HttpStatus.SEE_OTHER);
    }
}
