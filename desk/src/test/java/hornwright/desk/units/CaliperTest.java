package hornwright.desk.units;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.units.Caliper.Learnt;
import hornwright.desk.units.Caliper.Sample;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Calipers that type, through six keyboard layouts. The shapes of a burst are those public device descriptions give. */
final class CaliperTest {
    private static final List<String> SHOWN = List.of("4.07", "17.38", "48.92");

    private static String sent(String number, String sign, String unit, boolean comma) {
        return sign + (comma ? number.replace('.', ',') : number) + unit;
    }

    private static Caliper learnt(KeyLayout layout, LengthUnit unit) {
        List<Sample> samples = SHOWN.stream()
                .map(shown -> new Sample(shown, layout.arriving(sent(shown, "", "", false))))
                .toList();
        return Caliper.learn(samples, unit) instanceof Learnt.Profile profile
                ? profile.caliper()
                : new Caliper(KeyLayout.US, LengthUnit.THOU);
    }

    @ParameterizedTest
    @EnumSource
    void three_readings_tell_how_a_caliper_types(KeyLayout layout) {
        Caliper caliper = learnt(layout, LengthUnit.MILLIMETRE);
        assertThat(caliper.unit()).isEqualTo(LengthUnit.MILLIMETRE);
        assertThat(caliper.read(layout.arriving("30.61"))).isEqualTo(Lengths.read("30.61", LengthUnit.MILLIMETRE));
        assertThat(Caliper.parse(caliper.text())).contains(caliper);
    }

    @Test
    void a_thousand_bursts_through_six_layouts_keep_no_wrong_value() {
        Random random = new Random(20261125);
        List<KeyLayout> layouts = List.of(KeyLayout.values());
        int read = 0;
        List<String> wrong = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            KeyLayout layout = layouts.get(i % layouts.size());
            boolean inch = random.nextInt(4) == 0;
            BigDecimal meant = inch
                    ? BigDecimal.valueOf(1 + random.nextInt(3999), 3)
                    : BigDecimal.valueOf(1 + random.nextInt(9999), 2);
            String number = String.format(Locale.ROOT, random.nextBoolean() ? "%s" : "0%s", meant.toPlainString());
            String unit = List.of("", "", inch ? "in" : "mm").get(random.nextInt(3));
            String burst = sent(number, random.nextInt(5) == 0 ? "+" : "", unit, random.nextBoolean());
            Caliper caliper = learnt(layout, inch ? LengthUnit.INCH : LengthUnit.MILLIMETRE);
            BigDecimal right = inch ? meant.multiply(new BigDecimal("25.4")) : meant;
            if (caliper.read(layout.arriving(burst)) instanceof Typed.Amount amount) {
                read++;
                if (amount.value().compareTo(right) != 0) {
                    wrong.add("%s as %s: %s, not %s".formatted(burst, layout, amount.value(), right));
                }
            } else {
                refused.add("%s, arriving as %s".formatted(burst, layout.arriving(burst)));
            }
        }
        assertThat(refused).isEmpty();
        assertThat(wrong).isEmpty();
        assertThat(read).isEqualTo(1000);
    }

    @Test
    void a_burst_that_nobody_taught_or_that_arrived_broken_is_no_number() {
        String french = KeyLayout.FR.arriving("48.52");
        assertThat(Lengths.read(french, LengthUnit.MILLIMETRE)).isInstanceOf(Typed.Unclear.class);
        Caliper caliper = new Caliper(KeyLayout.US, LengthUnit.MILLIMETRE);
        for (String broken : List.of("48.5248.52", "48..52", "48.5 2.1", "ERR", "4x.52", "1,234.5", "")) {
            assertThat(caliper.read(broken)).as(broken).isInstanceOf(Typed.Unclear.class);
        }
    }

    @Test
    void what_does_not_tell_a_layout_is_said_so() {
        assertThat(Caliper.learn(List.of(new Sample("4.07", "4.07")), LengthUnit.MILLIMETRE))
                .isInstanceOf(Learnt.Unclear.class);
        List<Sample> same = List.of(new Sample("4.07", "4.07"), new Sample("4.07", "4.07"), new Sample("4.07", "4.07"));
        assertThat(Caliper.learn(same, LengthUnit.MILLIMETRE)).isInstanceOf(Learnt.Unclear.class);
        List<Sample> other =
                List.of(new Sample("4.07", "0.160"), new Sample("17.38", "0.684"), new Sample("48.92", "1.926"));
        assertThat(Caliper.learn(other, LengthUnit.MILLIMETRE)).isInstanceOf(Learnt.Unclear.class);
    }
}
