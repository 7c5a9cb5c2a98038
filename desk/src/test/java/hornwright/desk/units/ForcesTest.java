package hornwright.desk.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Standard gravity is 9.80665 m/s² by definition (CGPM 1901). */
final class ForcesTest {
    @ParameterizedTest
    @CsvSource({"0.31, 0.31", "0.31 N, 0.31", "32 g, 0.3138128", "32 grams, 0.3138128"})
    void newtons_and_grams_are_understood(String typed, String newtons) {
        assertThat(Forces.read(typed))
                .isInstanceOfSatisfying(
                        Typed.Amount.class, amount -> assertThat(amount.value()).isEqualByComparingTo(newtons));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "heavy", "32", "1.2.3", "5 lb"})
    void what_no_finger_gives_is_refused(String typed) {
        assertThat(Forces.read(typed)).isInstanceOf(Typed.Unclear.class);
    }
}
