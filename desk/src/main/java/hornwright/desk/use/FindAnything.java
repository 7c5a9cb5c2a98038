package hornwright.desk.use;

import hornwright.bench.horn.Keywork;
import hornwright.bench.job.StreamName;
import hornwright.desk.find.Hit;
import hornwright.desk.find.Shelf;
import hornwright.desk.find.Shelves;
import hornwright.desk.find.Text;
import hornwright.desk.journal.Card;
import hornwright.desk.journal.Person;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One question over everything the shop has written down. Each horn, the archive, the goods and the rules stand on a shelf
 * of their own, which is filled again only when its stream has grown.
 */
public final class FindAnything {
    private static final int MOST = 12;

    private record Filled(Object mark, Shelf shelf) {}

    private final Shop shop;
    private final Map<String, Filled> filled = new ConcurrentHashMap<>();

    public FindAnything(Shop shop) {
        this.shop = shop;
    }

    /** @param horn the keywork of the horn in hand, whose places are looked through too; null when none is */
    public Map<Text.Sort, Shelves.Found> find(String asked, @Nullable String job, @Nullable Keywork horn) {
        List<Shelf> shelves = new ArrayList<>();
        Map<String, Person> people =
                shop.data().people().all().stream().collect(Collectors.toMap(Person::id, person -> person));
        List<Card> cards = shop.data().cards().all();
        for (Card card : cards) {
            Person owner = people.get(card.owner());
            String name = owner == null ? "" : owner.name();
            shelves.add(
                    filled(card.job(), List.of(card.seq(), name), () -> TextsOfJob.of(shop.jobNow(card.job()), name)));
        }
        shelves.add(filled(
                "",
                shop.archive().seq(),
                () -> TextsOfShop.archive(shop.archive().state())));
        shelves.add(filled(
                "stock",
                shop.stock().seq(),
                () -> TextsOfShop.stock(shop.stock().state())));
        shelves.add(filled(
                "rules",
                shop.house().seq(),
                () -> TextsOfShop.rules(shop.house().state().rules())));
        if (job != null && horn != null) {
            shelves.add(filled("of " + job, horn, () -> TextsOfJob.places(job, horn)));
        }
        forget(cards);
        return Shelves.find(shelves, asked, MOST);
    }

    /** Places of one horn alone, the best first. */
    public List<Text> places(String job, Keywork horn, String asked) {
        Shelf shelf = filled("of " + job, horn, () -> TextsOfJob.places(job, horn));
        Shelves.Found found = Shelves.find(List.of(shelf), asked, MOST).get(Text.Sort.PLACE);
        return found == null ? List.of() : found.best().stream().map(Hit::text).toList();
    }

    /** How many texts are looked through. */
    public int size() {
        return filled.values().stream().mapToInt(one -> one.shelf().size()).sum();
    }

    private Shelf filled(String name, Object mark, Supplier<List<Text>> texts) {
        Filled there = filled.get(name);
        if (there != null && there.mark().equals(mark)) {
            return there.shelf();
        }
        Shelf shelf = Shelf.of(texts.get());
        filled.put(name, new Filled(mark, shelf));
        return shelf;
    }

    private void forget(List<Card> cards) {
        if (filled.size() > 2 * cards.size() + 10) {
            Set<String> there = cards.stream().map(Card::job).collect(Collectors.toSet());
            filled.keySet()
                    .removeIf(name -> name.startsWith(StreamName.ofJob("q").jobId()) && !there.contains(name));
        }
    }
}
