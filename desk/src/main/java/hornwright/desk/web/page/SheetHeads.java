package hornwright.desk.web.page;

import hornwright.desk.paper.PaperSize;
import hornwright.desk.paper.SheetHead;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.OnBench;
import io.javalin.http.Context;
import java.time.Instant;

/** What stands at the head of a paper, and how large it is. */
public final class SheetHeads {
    private SheetHeads() {}

    /** The horn, the shop, the day, and the edit the paper is made from. */
    public static SheetHead of(Desk desk, OnBench bench) {
        return new SheetHead(
                bench.name(),
                "%s · %s · edit %d"
                        .formatted(
                                desk.shop().house().state().name(),
                                Clocks.day(Instant.now()),
                                bench.history().seq()));
    }

    public static PaperSize size(Context context) {
        String asked = context.queryParam("size");
        String size = asked == null ? context.formParam("size") : asked;
        return size != null && size.equals("letter") ? PaperSize.LETTER : PaperSize.A4;
    }
}
