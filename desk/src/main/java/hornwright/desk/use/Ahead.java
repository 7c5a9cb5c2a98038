package hornwright.desk.use;

import hornwright.desk.journal.Card;
import hornwright.desk.journal.SqliteLibrary;
import java.util.List;

/**
 * Work done before anyone asks for it, beside the opening of the shop and of its pages, so that the first page is not
 * kept waiting. What fails here is left undone: whoever asks meets the failure and is told.
 */
public final class Ahead {
    private Ahead() {}

    /** Loads the embedded database, which every opening of a shop in a folder needs. */
    public static void loadDatabase() {
        begin("loading the database", SqliteLibrary::rehearse);
    }

    /** Reckons the plans of the horns on the shelf, the one last touched first. */
    public static void reckon(Shop shop, ProposePlan plans, int most) {
        begin("reckoning the shelf", () -> {
            List<Card> cards = new Shelf(shop).all();
            cards.stream().limit(most).forEach(card -> plans.of(shop.jobNow(card.job())));
        });
    }

    private static void begin(String name, Runnable work) {
        Thread.ofPlatform().daemon().name(name).start(() -> {
            try {
                work.run();
            } catch (RuntimeException left) {
                // Whoever asks for the same thing meets this again, on a page that can say so.
            }
        });
    }
}
