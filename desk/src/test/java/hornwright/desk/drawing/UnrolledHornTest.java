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
}
