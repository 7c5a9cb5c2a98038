package hornwright.desk.use;

import hornwright.desk.journal.Card;
import hornwright.desk.journal.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What the shelf showed of each horn, kept as long as nothing it follows from has changed: the program, the horn's edits,
 * the rules, the stock, the archive. So the first page needs no plan, however many horns there are.
 */
public final class ShelfMemory {
    private final Shop shop;
    private final String program;
    private final Map<String, Shown.Piece> kept;
    private final List<Shown.Piece> fresh = new ArrayList<>();

    private ShelfMemory(Shop shop, String program) {
        this.shop = shop;
        this.program = program;
        this.kept = program.isEmpty() ? Map.of() : shop.data().shown().all();
    }

    /** As everything stands now, shown in that language. */
    public static ShelfMemory in(String language, Shop shop) {
        return of(
                shop, ProgramStamp.stamp().map(stamp -> stamp + " " + language).orElse(""));
    }

    /** The same for a program that can be told from others by this word; empty when it cannot, and nothing is kept. */
    static ShelfMemory of(Shop shop, String program) {
        return new ShelfMemory(shop, program);
    }

    /** What was shown of this horn, or what {@code made} makes of it now. */
    public String of(Card card, Supplier<String> made) {
        return piece(
                "horn " + card.job(),
                "%s, horn %d, shop %d"
                        .formatted(program, card.seq(), shop.data().journal().lastOfShop()),
                made);
    }

    /** What was shown that follows from the program alone. */
    public String ofProgram(String name, Supplier<String> made) {
        return piece(name, program, made);
    }

    private String piece(String name, String follows, Supplier<String> made) {
        Shown.Piece known = kept.get(name);
        if (known != null && known.follows().equals(follows)) {
            return known.content();
        }
        Shown.Piece piece = new Shown.Piece(name, follows, made.get());
        fresh.add(piece);
        return piece.content();
    }

    /** Keeps what was made anew. */
    public void keep() {
        if (!fresh.isEmpty() && !program.isEmpty() && shop.readOnlyBecause().isEmpty()) {
            shop.data().shown().keep(List.copyOf(fresh));
        }
    }
}
