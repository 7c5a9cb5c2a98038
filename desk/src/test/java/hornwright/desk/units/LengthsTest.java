package hornwright.desk.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Conversions: one inch is 25.4 mm exactly, so every sixty-fourth is a finite decimal of millimetres. */
final class LengthsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4.62            | 4.62
            4,62            | 4.62
            4.62 mm         | 4.62
            4,62MM          | 4.62
            +4.62           | 4.62
            -0.30           | -0.30
            −0.30           | -0.30
            ' 5.'           | 5.0
            ,47             | 0.47
            .47             | 0.47
            1.234           | 1.234
            1,234           | 1.234
            0005.180        | 5.180
            1.047 in        | 26.5938
            1.047"          | 26.5938
            1.047″          | 26.5938
            .047 inch       | 1.1938
            47 thou         | 1.1938
            3/64            | 1.190625
            3/64"           | 1.190625
            1 3/64          | 26.590625
            1-3/64"         | 26.590625
            1 - 3/64 in     | 26.590625
            1½              | 38.1
            ¾"              | 19.05
            3⁄16            | 4.7625
            """)
    void what_a_person_or_a_caliper_types_is_understood(String typed, String millimetres) {
        assertThat(Lengths.read(typed, LengthUnit.MILLIMETRE))
                .isInstanceOfSatisfying(
                        Typed.Amount.class,
                        amount -> assertThat(amount.value()).isEqualByComparingTo(new BigDecimal(millimetres)));
    }

    @Test
    void every_sixty_fourth_up_to_forty_inches_is_read_exactly_and_written_back() {
        for (int n = 1; n <= 2560; n++) {
            java.math.BigDecimal right = new java.math.BigDecimal(n)
                    .multiply(new java.math.BigDecimal("25.4"))
                    .divide(new java.math.BigDecimal(64));
            String written = InchFraction.near(right.doubleValue()).orElseThrow();
            for (String typed : java.util.List.of(written, written.replace(' ', '-'), written.replace("\"", " in"))) {
                assertThat(Lengths.read(typed, LengthUnit.MILLIMETRE))
                        .as("%d/64 as %s", n, typed)
                        .isInstanceOfSatisfying(
                                Typed.Amount.class,
                                amount -> assertThat(amount.value()).isEqualByComparingTo(right));
            }
        }
    }

    @Test
    void spaces_that_cannot_be_seen_are_forgiven() {
        assertThat(Lengths.read("\u00a04.62\u2009mm\u200b\r\n", LengthUnit.MILLIMETRE))
                .isEqualTo(new Typed.Amount(new BigDecimal("4.62"), "mm"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.234,5", "1,234.5", "1.234.567", "1,234,567", "1 234,5", "1'234.5"})
    void a_number_that_could_be_read_two_ways_is_asked_about(String typed) {
        assertThat(Lengths.read(typed, LengthUnit.MILLIMETRE))
                .isInstanceOfSatisfying(
                        Typed.Unclear.class,
                        unclear -> assertThat(unclear.sentence()).contains("could be read two ways"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "abc",
                "4.6.",
                "--4",
                "4 5",
                "1/3",
                "3/0",
                "1 65/64",
                "3/64 mm",
                "4.6 cm",
                "4.6 kg",
                "1e3",
                "NaN",
                "Infinity",
                "0x10",
                "4.62 mm 5",
                "45600",
                "&éé",
                "12/",
                "/8",
                "1 2 3/4",
                "٣",
                "-",
                "."
            })
    void what_is_no_length_is_refused_with_a_sentence(String typed) {
        assertThat(Lengths.read(typed, LengthUnit.MILLIMETRE))
                .as(typed)
                .isInstanceOfSatisfying(
                        Typed.Unclear.class,
                        unclear -> assertThat(unclear.sentence()).hasSizeGreaterThan(20));
    }

    @Test
    void a_bare_decimal_is_in_the_unit_the_person_works_in() {
        assertThat(Lengths.read("1.047", LengthUnit.INCH))
                .isInstanceOfSatisfying(
                        Typed.Amount.class, amount -> assertThat(amount.value()).isEqualByComparingTo("26.5938"));
        assertThat(Lengths.read("47", LengthUnit.THOU))
                .isInstanceOfSatisfying(
                        Typed.Amount.class, amount -> assertThat(amount.value()).isEqualByComparingTo("1.1938"));
    }

    @Test
    void every_sixty_fourth_up_to_forty_inches_goes_to_millimetres_and_back() {
        for (int i = 1; i <= 2560; i++) {
            BigDecimal exact = new BigDecimal("0.396875").multiply(new BigDecimal(i));
            String text = InchFraction.near(exact.doubleValue()).orElseThrow();
            Typed read = Lengths.read(text, LengthUnit.MILLIMETRE);
            assertThat(read).isInstanceOf(Typed.Amount.class);
            assertThat(((Typed.Amount) read).value()).as(text).isEqualByComparingTo(exact);
        }
    }

    @Test
    void a_fraction_is_shown_only_near_a_sixty_fourth() {
        assertThat(InchFraction.near(1.19)).contains("3/64\"");
        assertThat(InchFraction.near(1.40)).isEmpty();
        assertThat(InchFraction.near(25.4)).contains("1\"");
        assertThat(InchFraction.near(-1.19)).isEmpty();
    }

    /** A caliper that types: sign, digits, mark, perhaps a unit. Whatever the mark, the same length comes out. */
    @Test
    void a_thousand_caliper_bursts_in_each_notation_give_no_silent_wrong_value() {
        Random random = new Random(8420);
        for (int i = 0; i < 1000; i++) {
            BigDecimal millimetres = BigDecimal.valueOf(random.nextInt(15_000), 2);
            String plain = millimetres.toPlainString();
            for (String burst : new String[] {
                plain, "+" + plain, "  " + plain, plain.replace('.', ','), plain + "mm", plain + " MM\r", "00" + plain
            }) {
                assertThat(Lengths.read(burst, LengthUnit.MILLIMETRE))
                        .as(burst)
                        .isInstanceOfSatisfying(
                                Typed.Amount.class,
                                amount -> assertThat(amount.value()).isEqualByComparingTo(millimetres));
            }
        }
    }
}
