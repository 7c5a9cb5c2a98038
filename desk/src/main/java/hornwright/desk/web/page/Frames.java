package hornwright.desk.web.page;

import hornwright.desk.message.Messages;
import hornwright.desk.web.view.Frame;
import io.javalin.http.Context;
import java.util.List;

/** Makes the frame of a page from its request. */
final class Frames {
    private Frames() {}

    public static Frame of(Context context, Assets assets, Messages texts, String shop, String title) {
        String query = context.queryString();
        boolean shown = context.req().getMethod().equals("GET");
        String here = shown ? context.path() + (query == null ? "" : "?" + query) : "/";
        return new Frame(
                title,
                assets.files(),
                Theme.of(context).word(),
                here,
                shop,
                null,
                "",
                List.of(),
                List.of(),
                "",
                "",
                Helps.at(context, texts),
                TourStops.at(context, texts),
                "");
    }
}
