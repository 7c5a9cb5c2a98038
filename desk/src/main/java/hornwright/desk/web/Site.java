package hornwright.desk.web;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.RefusalPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Consumer;

/** What the server shows: the assets, the templates and the pages. */
public final class Site {
    /** Marks a request whose refusal has been written. */
    static final String ANSWERED = "hornwright.answered";

    private final Assets assets = new Assets();
    private final Templates templates = new Templates();

    Assets assets() {
        return assets;
    }

    List<Consumer<RoutesConfig>> pages() {
        return List.of();
    }

    void refuse(Context context, Refusal refusal) {
        context.attribute(ANSWERED, true);
        context.status(refusal.status());
        templates.answer(
                context, "refusal", new RefusalPage(frame(context, "Not here"), refusal.status(), refusal.sentence()));
    }

    private Frame frame(Context context, String title) {
        return new Frame(
                title, assets.files(), Theme.of(context).word(), context.path(), "Quayside Winds", null, List.of(), "");
    }
}
