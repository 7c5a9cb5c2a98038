package hornwright.desk.web.history;

import hornwright.bench.job.StreamName;
import hornwright.bench.stock.StockItem;
import hornwright.desk.use.ShowHistory;
import hornwright.desk.use.Undo;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What was set in the rules and the materials and counted on the shelf, and the button that takes it back. */
public final class ShopHistoryPages {
    /** More than anybody looks through; find leads to what is older. */
    private static final int NEWEST = 200;

    /** Materials are rules: their figures lie in the same stream. */
    private enum Kept {
        RULES("Rules and materials", "rules", StreamName.RULES),
        STOCK("Stock", "stock", StreamName.STOCK);

        private final String title;
        private final String word;
        private final StreamName stream;

        Kept(String title, String word, StreamName stream) {
            this.title = title;
            this.word = word;
            this.stream = stream;
        }
    }

    private final Desk desk;

    public ShopHistoryPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/history", this::show);
        routes.post("/history/rules/undo", context -> undo(context, Kept.RULES));
        routes.post("/history/stock/undo", context -> undo(context, Kept.STOCK));
    }

    private void show(Context context) {
        desk.answer(
                context,
                "shop-history",
                new ShopHistoryPage(
                        desk.frame(context, "History of the shop"),
                        Stream.of(Kept.values())
                                .map(kept -> new ShopHistoryPage.Part(
                                        kept.title,
                                        kept.word,
                                        EditDays.of(newest(kept.stream), words -> OnBench.capital(named(words)))))
                                .toList()));
    }

    private List<ShowHistory.Line> newest(StreamName stream) {
        return new ShowHistory(desk.shop()).of(stream).stream().limit(NEWEST).toList();
    }

    /** An edit in the words of the pages where it was made, not by the id of its rule or goods. */
    private String named(String words) {
        Stream<Map.Entry<String, String>> rules =
                desk.shop().house().state().rules().all().stream().map(rule -> Map.entry(rule.id(), rule.says()));
        Stream<Map.Entry<String, String>> goods =
                desk.shop().stock().state().items().stream().map(item -> Map.entry(item.id(), words(item)));
        return Stream.concat(rules, goods)
                .filter(name -> words.contains(name.getKey()))
                .max(Comparator.comparingInt(name -> name.getKey().length()))
                .map(name -> words.replace(name.getKey(), name.getValue()))
                .orElse(words);
    }

    private static String words(StockItem item) {
        String across = item.diameterMm() == null ? "" : " " + Written.plain(item.diameterMm()) + " mm";
        String thick = item.thicknessMm() == null ? "" : ", " + Written.plain(item.thicknessMm()) + " mm thick";
        return item.kind().word() + " of " + item.material() + across + thick;
    }

    private void undo(Context context, Kept kept) {
        String edit = Desk.field(context, "edit");
        if (!edit.matches("\\d{1,15}")) {
            throw new Refusal(422, "Say which edit is to be taken back, by its number.");
        }
        Desk.kept(new Undo(desk.shop()).undo(kept.stream, Desk.form(context), Long.parseLong(edit)));
        Back.to(context, "/history#" + kept.word);
    }
}
