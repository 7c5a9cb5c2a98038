package hornwright.desk.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is found by which words. */
final class ShelvesTest {
    private static final int MOST = 12;

    private static Text note(String title, String detail) {
        return new Text(Text.Sort.NOTE, title, detail, "/" + title.replace(' ', '-'));
    }

    private static List<String> found(String asked, Text... texts) {
        return Shelves.find(List.of(Shelf.of(List.of(texts))), asked, MOST).values().stream()
                .flatMap(found -> found.best().stream())
                .map(hit -> hit.text().title())
                .toList();
    }

    @Test
    void sharps_flats_accents_and_capitals_are_as_one_likes() {
        Text foot = note("G♯ foot", "");
        for (String asked : List.of("g# foot", "G♯ Foot", "g sharp foot", "G-sharp foo", "FOOT g♯")) {
            assertThat(found(asked, foot)).as(asked).containsExactly("G♯ foot");
        }
        Text pad = note("low E♭ pad", "");
        for (String asked : List.of("eb", "E♭", "e flat", "low e-flat pad")) {
            assertThat(found(asked, pad)).as(asked).containsExactly("low E♭ pad");
        }
        assertThat(found("g foot", note("A foot", ""))).isEmpty();
        assertThat(found("muller", note("Müller", ""))).containsExactly("Müller");
        assertThat(found("strasse", note("Hafenstraße", "x strasse"))).hasSize(1);
        assertThat(found("Sørlandet", note("Sorlandet", ""))).hasSize(1);
    }

    @Test
    void every_word_must_occur_and_its_beginning_is_enough() {
        Text[] texts = {note("one", "dark red felt"), note("two", "red cork"), note("three", "felted seam")};
        assertThat(found("fel", texts)).containsExactlyInAnyOrder("one", "three");
        assertThat(found("red fel", texts)).containsExactly("one");
        assertThat(found("elt", texts)).isEmpty();
        assertThat(found("felt cork", texts)).isEmpty();
    }

    @Test
    void titles_come_before_the_rest_whole_words_before_beginnings_short_before_long() {
        assertThat(found(
                        "foot",
                        note("a", "a foot"),
                        note("footing", ""),
                        note("adhesive under the foot", ""),
                        note("foot", "")))
                .containsExactly("foot", "adhesive under the foot", "footing", "a");
    }

    @Test
    void nothing_asked_finds_nothing_and_signs_alone_do_neither() {
        assertThat(found("", note("a", ""))).isEmpty();
        assertThat(found(" .,-%_*' ", note("a", ""))).isEmpty();
        assertThat(found("' or 1=1 --", note("a", "horn"))).isEmpty();
    }

    @Test
    void more_than_is_shown_is_counted() {
        List<Text> many = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            many.add(note("felt " + i, ""));
        }
        Map<Text.Sort, Shelves.Found> found = Shelves.find(List.of(Shelf.of(many)), "felt", MOST);
        Shelves.Found notes = Objects.requireNonNull(found.get(Text.Sort.NOTE));
        assertThat(notes.count()).isEqualTo(40);
        assertThat(notes.best()).hasSize(MOST);
    }

    /** How long this takes is measured by FindBenchmark. */
    @Test
    void among_a_hundred_thousand_texts_it_finds_as_many_as_reading_them_one_by_one() {
        List<List<Text>> horns = horns(1000, 100);
        List<Shelf> shelves = horns.stream().map(Shelf::of).toList();
        for (String asked : List.of("felt", "red felt", "packed nat", "cork low b", "zzz")) {
            long read = horns.stream()
                    .flatMap(List::stream)
                    .filter(text -> holds(text, asked))
                    .count();
            int found = Shelves.find(shelves, asked, MOST).values().stream()
                    .mapToInt(Shelves.Found::count)
                    .sum();
            assertThat(found).as(asked).isEqualTo((int) read);
        }
    }

    private static boolean holds(Text text, String asked) {
        List<String> words = Arrays.asList(
                (text.title() + " " + text.detail()).toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}♯♭]+"));
        return Arrays.stream(asked.split(" "))
                .allMatch(start -> words.stream().anyMatch(word -> word.startsWith(start)));
    }

    private static List<List<Text>> horns(int horns, int each) {
        Random random = new Random(7);
        List<String> materials = List.of("natural cork", "woven wool felt", "kid leather", "rubber", "brass");
        List<String> colours = List.of("red", "dark red", "white", "brown", "yellowed");
        List<String> places =
                List.of("G♯ foot", "low B♭ pad", "palm D bumper", "bis link", "neck cork", "E♭ guard felt");
        List<List<Text>> shelves = new ArrayList<>();
        for (int horn = 0; horn < horns; horn++) {
            List<Text> texts = new ArrayList<>();
            for (int i = 0; i < each; i++) {
                texts.add(new Text(
                        Text.Sort.FOUND,
                        places.get(random.nextInt(places.size())) + ", alto " + (30_000 + horn * 17),
                        "%s, %s, packed, word%d"
                                .formatted(
                                        materials.get(random.nextInt(materials.size())),
                                        colours.get(random.nextInt(colours.size())),
                                        random.nextInt(5000))
                                .toLowerCase(Locale.ROOT),
                        "/horn/q-" + horn));
            }
            shelves.add(texts);
        }
        return shelves;
    }
}
