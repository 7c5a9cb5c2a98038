package hornwright.desk.use;

import hornwright.desk.journal.Card;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The jobs of the shop, the one last touched first. */
public record Shelf(Shop shop) {
    public List<Card> all() {
        return shop.data().cards().all();
    }

    /** Jobs whose card holds every one of these words or beginnings of words. */
    public List<Card> find(String words) {
        List<String> wanted = Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        return all().stream()
                .filter(card -> wanted.stream().allMatch(card.words()::contains))
                .toList();
    }
}
