package hornwright.desk.web.shelf;

import hornwright.desk.find.Shelves;
import hornwright.desk.find.Text;
import hornwright.desk.use.FindAnything;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** One box over everything the shop has written down. */
public final class FindPages {
    private static final int LONGEST = 200;

    private final Desk desk;
    private final FindAnything anything;

    public FindPages(Desk desk) {
        this.desk = desk;
        this.anything = new FindAnything(desk.shop());
    }

    public void routes(RoutesConfig routes) {
        routes.get("/find", this::find);
    }

    private void find(Context context) {
        String said = Objects.requireNonNullElse(context.queryParam("q"), "").strip();
        String asked = said.substring(0, Math.min(said.length(), LONGEST));
        String horn = Objects.requireNonNullElse(context.queryParam("horn"), "");
        @Nullable OnBench bench = horn.isEmpty() ? null : desk.bench(horn);
        List<FindPage.Group> groups = groups(asked, bench);
        Frame frame = bench == null ? desk.frame(context, "Find") : desk.frame(context, bench, "Find", "");
        FindPage page = new FindPage(frame, asked, horn, told(asked, groups), groups);
        desk.answer(context, Live.asked(context) ? "find-hits" : "find", page);
    }

    private List<FindPage.Group> groups(String asked, @Nullable OnBench bench) {
        Map<Text.Sort, Shelves.Found> found =
                anything.find(asked, bench == null ? null : bench.id(), bench == null ? null : bench.keywork());
        return found.entrySet().stream()
                .map(entry -> new FindPage.Group(
                        entry.getKey().title(),
                        entry.getValue().best().stream()
                                .map(hit -> new FindPage.Line(
                                        hit.text().title(),
                                        hit.text().detail(),
                                        hit.text().address()))
                                .toList(),
                        more(entry.getValue())))
                .toList();
    }

    private static String more(Shelves.Found found) {
        int more = found.count() - found.best().size();
        return more == 0 ? "" : "and %d more; another word finds fewer".formatted(more);
    }

    private static String told(String asked, List<FindPage.Group> groups) {
        if (asked.isEmpty()) {
            return "A serial, an owner, a material, a place, a word of a note. Beginnings of words do.";
        }
        return groups.isEmpty() ? "Nothing here holds “%s”. Fewer letters find more.".formatted(asked) : "";
    }
}
