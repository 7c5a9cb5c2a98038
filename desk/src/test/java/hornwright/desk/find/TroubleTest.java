package hornwright.desk.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TroubleTest {
    private static List<String> found(String asked) {
        Shelf shelf = Shelf.of(Stream.of(Trouble.values())
                .map(trouble -> trouble.text("q-0001"))
                .toList());
        return Shelves.find(List.of(shelf), asked, 5).values().stream()
                .flatMap(found -> found.best().stream())
                .map(hit -> hit.text().address())
                .toList();
    }

    @Test
    void what_a_player_says_of_linked_keys_leads_to_the_links() {
        assertThat(found("E closes but F sharp stays open")).containsExactly("/horn/q-0001/links");
        assertThat(found("link")).contains("/horn/q-0001/links");
        assertThat(Trouble.in("E closes but F sharp stays open")).containsExactly(Trouble.LINKS);
        assertThat(Trouble.in("bis and F♯ do not close together")).containsExactly(Trouble.LINKS);
    }

    @Test
    void other_complaints_lead_to_their_own_pages() {
        assertThat(Trouble.in("Low notes gurgle, keys rattle")).containsExactly(Trouble.LEAKS, Trouble.FIT);
        assertThat(Trouble.in("G sharp is heavy")).containsExactly(Trouble.FEEL);
        assertThat(Trouble.in("")).isEmpty();
        assertThat(Trouble.in("To be sold")).isEmpty();
    }
}
