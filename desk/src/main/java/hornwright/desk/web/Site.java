package hornwright.desk.web;

import hornwright.desk.message.Messages;
import hornwright.desk.use.Shop;
import hornwright.desk.web.archive.ArchivePages;
import hornwright.desk.web.archive.AsBuiltPages;
import hornwright.desk.web.archive.ImportPages;
import hornwright.desk.web.archive.KeepPages;
import hornwright.desk.web.archive.SharePages;
import hornwright.desk.web.archive.WitnessPages;
import hornwright.desk.web.archive.YearImportPages;
import hornwright.desk.web.arrival.ArrivalPages;
import hornwright.desk.web.feel.FeelPages;
import hornwright.desk.web.fits.FitPages;
import hornwright.desk.web.fits.InsteadPages;
import hornwright.desk.web.handover.HandOverPages;
import hornwright.desk.web.history.HistoryPages;
import hornwright.desk.web.history.ShopHistoryPages;
import hornwright.desk.web.horn.HornPages;
import hornwright.desk.web.horn.PlacePages;
import hornwright.desk.web.measure.Calipers;
import hornwright.desk.web.measure.MeasurePages;
import hornwright.desk.web.measure.PointPages;
import hornwright.desk.web.page.Assets;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.LivePages;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Templates;
import hornwright.desk.web.photo.KeptPages;
import hornwright.desk.web.photo.PhotoPages;
import hornwright.desk.web.plan.LinksPages;
import hornwright.desk.web.plan.PaperPages;
import hornwright.desk.web.plan.PlanPages;
import hornwright.desk.web.sheets.BodyPages;
import hornwright.desk.web.sheets.SheetPages;
import hornwright.desk.web.shelf.FindPages;
import hornwright.desk.web.shelf.ShelfPages;
import hornwright.desk.web.shop.MaterialsPages;
import hornwright.desk.web.shop.RulesPages;
import hornwright.desk.web.shop.StockPages;
import hornwright.desk.web.sound.LeakPages;
import hornwright.desk.web.sound.SoundPages;
import hornwright.desk.web.steps.WorkPages;
import hornwright.desk.web.survey.SurveyPages;
import hornwright.desk.web.view.RefusalPage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Consumer;

/** What the server shows: the assets, the templates and the pages of one shop. */
public final class Site {
    /** Marks a request whose refusal has been written. */
    static final String ANSWERED = "hornwright.answered";

    private final Assets assets = new Assets();
    private final Desk desk;

    public Site(Shop shop) {
        this(shop, Messages.english());
    }

    /** @param texts the language pages are written in */
    public Site(Shop shop, Messages texts) {
        this.desk = new Desk(shop, assets, new Templates(texts));
    }

    Assets assets() {
        return assets;
    }

    List<Consumer<RoutesConfig>> pages() {
        return List.of(
                new ShelfPages(desk)::routes,
                new FindPages(desk)::routes,
                new ArrivalPages(desk)::routes,
                new HornPages(desk)::routes,
                new PlacePages(desk)::routes,
                new PhotoPages(desk)::routes,
                new KeptPages(desk)::routes,
                new ImportPages(desk)::routes,
                new SharePages(desk)::routes,
                new FitPages(desk)::routes,
                new YearImportPages(desk)::routes,
                new InsteadPages(desk)::routes,
                new SurveyPages(desk)::routes,
                new MeasurePages(desk)::routes,
                new PointPages(desk)::routes,
                new Calipers(desk)::routes,
                new PlanPages(desk)::routes,
                new LinksPages(desk)::routes,
                new FeelPages(desk)::routes,
                new MaterialsPages(desk)::routes,
                new PaperPages(desk)::routes,
                new AsBuiltPages(desk)::routes,
                new ArchivePages(desk)::routes,
                new WitnessPages(desk)::routes,
                new KeepPages(desk)::routes,
                new WorkPages(desk)::routes,
                new SheetPages(desk)::routes,
                new BodyPages(desk)::routes,
                new HandOverPages(desk)::routes,
                new SoundPages(desk)::routes,
                new LeakPages(desk)::routes,
                new HistoryPages(desk)::routes,
                new ShopHistoryPages(desk)::routes,
                new LivePages(desk)::routes,
                new StockPages(desk)::routes,
                new RulesPages(desk)::routes);
    }

    void refuse(Context context, Refusal refusal) {
        context.attribute(ANSWERED, true);
        context.status(refusal.status());
        desk.answer(
                context,
                "refusal",
                new RefusalPage(desk.frame(context, "Not done"), refusal.status(), refusal.sentence()));
    }
}
