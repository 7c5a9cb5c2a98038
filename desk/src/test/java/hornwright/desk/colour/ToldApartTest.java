package hornwright.desk.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Icons, patterns and words say everything; the colours must not leave it to them. */
class ToldApartTest {
    /** Bench judgement: about ten times what is only just seen side by side. */
    private static final double LEAST = 10;
    /** WCAG 2.2, success criterion 1.4.3 (from memory). */
    private static final double READABLE = 4.5;

    private static final List<String> STATES = List.of("planned", "done", "stale", "missing", "contested");
    /** What lies under keys and on them, each of which may stand beside or follow each other in a band of the ruler. */
    private static final List<String> LAID = List.of("cork", "felt", "leather", "synthetic", "tubing", "nylon");

    static Stream<Styles> themes() {
        return Stream.of(Styles.light(), Styles.dark());
    }

    private record Colour(String name, String hex) {}

    private static Properties published() throws IOException {
        Properties pairs = new Properties();
        try (InputStream in = ToldApartTest.class.getResourceAsStream("/hornwright/colour/ciede2000.ref")) {
            pairs.load(Objects.requireNonNull(in, "the published pairs"));
        }
        return pairs;
    }

    @Test
    void the_formula_gives_every_published_difference() throws IOException {
        Properties ref = published();
        for (int pair = 1; pair <= 34; pair++) {
            String key = String.format(Locale.ROOT, "pair.%02d", pair);
            double[] n = Arrays.stream(ref.getProperty(key).split(" "))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            Lab one = new Lab(n[0], n[1], n[2]);
            Lab two = new Lab(n[3], n[4], n[5]);
            assertThat(one.difference(two))
                    .as(key)
                    .isCloseTo(n[6], within(Double.parseDouble(ref.getProperty("tolerance"))));
            assertThat(two.difference(one))
                    .as(key)
                    .isCloseTo(n[6], within(Double.parseDouble(ref.getProperty("tolerance"))));
        }
    }

    /** The rows of the published matrices add up to one, so a grey stays the grey it was; a mistyped digit would not. */
    @Test
    void a_grey_is_the_same_grey_to_every_eye() {
        for (Sight sight : Sight.values()) {
            for (double[] row : sight.matrix()) {
                assertThat(Arrays.stream(row).sum()).as(sight.name()).isCloseTo(1, within(2e-6));
            }
            assertThat(sight.sees("#808080").difference(Sight.NORMAL.sees("#808080")))
                    .as(sight.name())
                    .isLessThan(0.01);
        }
    }

    @Test
    void an_eye_without_long_cones_takes_a_red_for_a_dark_one_and_one_without_short_cones_does_not() {
        double full = Sight.NORMAL.sees("#ff0000").lightness();
        assertThat(Sight.WITHOUT_LONG.sees("#ff0000").lightness()).isLessThan(full - 10);
        assertThat(Sight.WITHOUT_SHORT.sees("#ff0000").lightness()).isCloseTo(full, within(5.0));
    }

    @Test
    void dark_is_the_same_dark_whether_it_was_chosen_or_is_the_systems() {
        assertThat(Styles.systemDark()).isNotEmpty().isEqualTo(Styles.chosenDark());
    }

    @ParameterizedTest
    @MethodSource("themes")
    void the_icons_and_words_of_two_states_are_told_apart_by_every_eye(Styles styles) {
        allApart(STATES.stream()
                .map(state -> new Colour(state, styles.of("[data-state=%s] .token".formatted(state))))
                .toList());
    }

    @ParameterizedTest
    @MethodSource("themes")
    void the_faces_of_two_states_are_told_apart_by_every_eye(Styles styles) {
        allApart(STATES.stream().map(state -> face(styles, state)).toList());
    }

    /** Two cups of following steps meet anywhere on the horn; the figure beside each says the rest. */
    @ParameterizedTest
    @MethodSource("themes")
    void the_five_steps_of_a_number_are_told_apart_by_every_eye(Styles styles) {
        allApart(Stream.of("depth-1", "depth-2", "depth-3", "depth-4", "depth-5")
                .map(step -> new Colour(step, styles.colour(step)))
                .toList());
    }

    @ParameterizedTest
    @MethodSource("themes")
    void two_materials_that_may_lie_side_by_side_or_follow_each_other_are_told_apart_by_every_eye(Styles styles) {
        allApart(LAID.stream().map(stuff -> ground(styles, stuff)).toList());
        allApart(Stream.of("brass", "nickel", "steel")
                .map(metal -> new Colour(metal, styles.of(".b-" + metal)))
                .toList());
    }

    @ParameterizedTest
    @MethodSource("themes")
    void what_lies_on_a_key_is_told_from_its_brass_by_every_eye(Styles styles) {
        SoftAssertions softly = new SoftAssertions();
        for (String stuff : LAID) {
            for (String brass : List.of(".arm", ".tube")) {
                apart(softly, ground(styles, stuff), new Colour(brass, styles.of(brass)));
            }
        }
        apart(softly, ground(styles, "shellac"), new Colour("arm", styles.of(".arm")));
        softly.assertAll();
    }

    @ParameterizedTest
    @MethodSource("themes")
    void the_word_of_a_state_is_read_on_every_ground_it_stands_on(Styles styles) {
        for (String state : STATES) {
            String word = styles.colour(state);
            for (String ground : List.of("paper", "ground", "sunk", state + "-wash")) {
                assertThat(contrast(word, styles.colour(ground)))
                        .as("%s on %s", state, ground)
                        .isGreaterThanOrEqualTo(READABLE);
            }
        }
    }

    private static Colour face(Styles styles, String state) {
        // The hatched one is drawn by a pattern of its own.
        return new Colour(
                state,
                state.equals("stale")
                        ? styles.of(".g-stale")
                        : styles.of("[data-layer=state] [data-state=%s] .face".formatted(state)));
    }

    private static Colour ground(Styles styles, String stuff) {
        return new Colour(stuff, styles.of(".g-" + stuff));
    }

    private static void allApart(List<Colour> colours) {
        SoftAssertions softly = new SoftAssertions();
        List<Colour> before = new ArrayList<>();
        for (Colour colour : colours) {
            before.forEach(other -> apart(softly, other, colour));
            before.add(colour);
        }
        softly.assertAll();
    }

    private static void apart(SoftAssertions softly, Colour one, Colour two) {
        for (Sight sight : Sight.values()) {
            softly.assertThat(sight.sees(one.hex).difference(sight.sees(two.hex)))
                    .as("%s %s beside %s %s, %s", one.name, one.hex, two.name, two.hex, sight)
                    .isGreaterThanOrEqualTo(LEAST);
        }
    }

    private static double contrast(String one, String two) {
        double[] light = Stream.of(one, two)
                .mapToDouble(ToldApartTest::luminance)
                .sorted()
                .toArray();
        return (light[1] + 0.05) / (light[0] + 0.05);
    }

    private static double luminance(String hex) {
        double[] share = {0.2126, 0.7152, 0.0722};
        double[] linear = Sight.linear(hex);
        return IntStream.range(0, 3).mapToDouble(at -> share[at] * linear[at]).sum();
    }
}
