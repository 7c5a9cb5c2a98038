package hornwright.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class UnrolledHornTest {
    private static final Pattern PLACE = Pattern.compile("data-place=\"([^\"]+)\"");

    static Stream<Keywork> horns() {
        Stream<Keywork> shipped = KeyworkFile.SHIPPED.stream()
                .map(name -> KeyworkFile.shipped(name).orElseThrow());
        Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        return Stream.concat(shipped, Stream.of(StraightHorn.from(alto)));
    }

    @ParameterizedTest
    @MethodSource("horns")
    void every_place_is_drawn_once(Keywork keywork) {
        String svg = UnrolledHorn.of(keywork).screen(Showing.asBuilt());

        List<String> drawn = new ArrayList<>();
        Matcher matcher = PLACE.matcher(svg);
        while (matcher.find()) {
            drawn.add(matcher.group(1));
        }
        assertThat(drawn)
                .containsExactlyInAnyOrderElementsOf(
                        keywork.places().stream().map(Place::id).toList());
    }

    @ParameterizedTest
    @MethodSource("horns")
    void every_cup_stands_at_its_true_place_along_and_round_the_tube(Keywork keywork) {
        UnrolledHorn horn = UnrolledHorn.of(keywork);
        for (Cup cup : keywork.cups()) {
            Position drawn = horn.sheet().position(horn.cup(cup));
            Position wanted = keywork.holeOf(cup).at();
            assertThat(drawn.atMm()).as(cup.id()).isCloseTo(wanted.atMm(), within(0.01));
            double turned = Math.IEEEremainder(drawn.angleDeg() - wanted.angleDeg(), 360);
            assertThat(turned).as(cup.id()).isCloseTo(0, within(0.01));
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void no_name_lies_on_another_name_or_on_a_cup(Keywork keywork) {
        UnrolledHorn horn = UnrolledHorn.of(keywork);
        for (boolean upright : new boolean[] {false, true}) {
            List<Label> labels = upright ? horn.uprightLabels() : horn.lyingLabels();
            assertThat(labels).hasSize(keywork.cups().size());
            for (Label label : labels) {
                Box box = Labelling.box(label, upright);
                assertThat(labels)
                        .filteredOn(other -> !other.cup().equals(label.cup()))
                        .noneMatch(other -> Labelling.box(other, upright).meets(box));
                assertThat(keywork.cups().list()).noneMatch(cup -> box.meets(horn.cup(cup), horn.radius(cup)));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void every_place_can_be_pointed_at_and_reached_by_keyboard(Keywork keywork) {
        String svg = UnrolledHorn.of(keywork).screen(place -> new Showing.Shown("cork", Standing.PLANNED));
        assertThat(svg).doesNotContain("style=", "<style", "javascript:", "NaN");
        int places = keywork.places().size();
        assertThat(count(svg, "role=\"button\" tabindex=\"0\" aria-label=\"[^\"]+\"><title>"))
                .isEqualTo(places);
        assertThat(count(svg, "data-state=\"planned\"")).isEqualTo(places);
        for (Place place : keywork.places()) {
            assertThat(svg).contains("<title>" + Text.escaped(place.display()) + ", cork, planned</title>");
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void ids_stand_once_and_what_is_pointed_to_is_there(Keywork keywork) {
        UnrolledHorn horn = UnrolledHorn.of(keywork);
        Showing stale = place -> new Showing.Shown(place.asBuilt().material(), Standing.STALE);
        for (String svg : List.of(horn.screen(stale), horn.print(stale, 250).svg())) {
            List<String> ids = all(svg, " id=\"([^\"]+)\"");
            assertThat(ids).doesNotHaveDuplicates();
            assertThat(ids).containsAll(all(svg, "url\\(#([^)]+)\\)"));
            assertThat(ids).containsAll(all(svg, "href=\"#([^\"]+)\""));
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void paper_needs_no_style_sheet(Keywork keywork) {
        Print print = UnrolledHorn.of(keywork).print(Showing.asBuilt(), 254);
        assertThat(print.heightMm()).isCloseTo(254, within(0.01));
        assertThat(print.svg())
                .doesNotContain("class=", " style=", "var(", "currentColor", "NaN")
                .contains("mm\" height=");
        for (Cup cup : keywork.cups()) {
            assertThat(print.words())
                    .extracting(PrintWord::text)
                    .contains(keywork.nameOf(cup).display());
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void the_drawing_stays_small_enough_for_a_slow_tablet(Keywork keywork) {
        String svg = UnrolledHorn.of(keywork).screen(Showing.asBuilt());
        assertThat(count(svg, "<[a-z]")).isLessThan(2000);
        assertThat(svg.length()).isLessThan(200_000);
    }

    private static int count(String text, String pattern) {
        return (int) Pattern.compile(pattern).matcher(text).results().count();
    }

    private static List<String> all(String text, String pattern) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .toList();
    }
}
