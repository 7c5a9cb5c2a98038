package hornwright.desk.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Direction;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class LeverTest {
    static Stream<Keywork> horns() {
        return KeyworkFile.SHIPPED.stream()
                .map(name -> KeyworkFile.shipped(name).orElseThrow());
    }

    /** The arm is stated in the keywork; the drawing finds it from angles, bore and heights, a second way. */
    @ParameterizedTest
    @MethodSource("horns")
    void the_arm_of_a_cup_is_as_long_on_the_drawing_as_in_the_keywork(Keywork keywork) {
        for (Cup cup : keywork.cups()) {
            Key key = keywork.keyOf(cup);
            if (key.axis().direction() == Direction.ALONG) {
                LeverFrame frame = LeverFrame.of(keywork, key);
                Spot seat = frame.aboveHole(keywork.holeOf(cup).chimneyMm());
                assertThat(frame.hinge().distance(seat)).as(cup.id()).isCloseTo(cup.armMm(), within(0.5));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void the_opened_cup_stands_at_its_height(Keywork keywork) {
        for (Cup cup : keywork.cups()) {
            Key key = keywork.keyOf(cup);
            LeverFrame frame = LeverFrame.of(keywork, key);
            double open = Math.max(key.restRotationRad(), key.pressedRotationRad());
            Spot seat = frame.aboveHole(keywork.holeOf(cup).chimneyMm());
            double lifted = frame.opened(seat, open).distance(seat);
            double wanted = cup.heightCentreMm(keywork.holeOf(cup));
            assertThat(lifted).as(cup.id()).isCloseTo(wanted, within(0.02 * wanted + 0.02));
        }
    }

    @ParameterizedTest
    @MethodSource("horns")
    void every_key_draws_on_screen_and_on_paper_with_its_numbers_apart(Keywork keywork) {
        for (Key key : keywork.keys()) {
            Lever lever = Lever.of(keywork, key);
            assertThat(lever.screen(Showing.asBuilt())).doesNotContain("style=", "NaN", "Infinity");
            Print print = lever.print(Showing.asBuilt());
            assertThat(print.shapes()).doesNotContain("class=", "var(", "NaN");
            List<PrintWord> words = print.words();
            for (PrintWord word : words) {
                assertThat(word.xMm()).isBetween(0.0, print.widthMm());
                assertThat(words)
                        .filteredOn(other -> !other.equals(word) && other.align() == word.align())
                        .allSatisfy(other -> assertThat(Math.abs(other.yMm() - word.yMm()))
                                .as(key.id() + " " + word.text() + "/" + other.text())
                                .isGreaterThan(word.sizeMm() * 1.05));
            }
        }
    }

    /** A pad is drawn as a slab; its width on paper is read back from the drawing. */
    @ParameterizedTest
    @MethodSource("horns")
    void a_millimetre_is_a_millimetre_on_paper(Keywork keywork) {
        Pattern slab = Pattern.compile("<rect[^>]* width=\"([0-9.]+)\"");
        for (Cup cup : keywork.cups()) {
            Print print = Lever.of(keywork, keywork.keyOf(cup)).print(Showing.asBuilt());
            double unitsPerMm = Double.parseDouble(print.viewBox().split(" ")[2]) / print.widthMm();
            List<Double> widths = slab.matcher(print.shapes())
                    .results()
                    .map(found -> Double.parseDouble(found.group(1)) / unitsPerMm)
                    .toList();
            assertThat(widths)
                    .as(cup.id())
                    .anySatisfy(width -> assertThat(width).isCloseTo(cup.pad().diameterMm(), within(0.05)));
        }
    }
}
