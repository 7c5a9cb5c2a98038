package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.neck.NeckSheet;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.sound.LeakEffect;
import hornwright.bench.survey.NeckPoint;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class NeckSheetTest {
    @Test
    void a_tenon_is_round_within_three_hundredths_and_straight_within_two() {
        assertThat(tenon(24.50, 24.47, 24.49, 24.48).verdict()).isEqualTo(Verdict.GOOD);
        assertThat(tenon(24.50, 24.45, 24.48, 24.47).says()).contains("out of round");
        assertThat(tenon(24.50, 24.50, 24.46, 24.46).says()).contains("tapered");
    }

    @Test
    void the_gap_is_a_ring_and_as_one_hole_it_is_smaller_than_its_area_says() {
        SheetLine line = NeckSheet.of(measured(24.50, 24.50, 24.50, 24.50)
                        .mm(ReadingKind.NECK, "neck", NeckPoint.RECEIVER.words(), 24.60)
                        .asked())
                .line(NeckSheet.TENON)
                .orElseThrow();
        assertThat(told(line, "loose by")).isCloseTo(0.10, within(1e-9));
        double area = Math.PI / 4 * (24.6 * 24.6 - 24.5 * 24.5);
        assertThat(told(line, "area of the gap")).isCloseTo(area, within(1e-9));
        assertThat(told(line, "as one hole")).isPositive().isLessThan(Math.sqrt(4 * area / Math.PI));
        assertThat(line.says()).contains("loose; if nothing closes it, it weakens most");
    }

    @Test
    void a_tenon_larger_than_its_receiver_is_measured_again_and_never_forced() {
        SheetLine line = NeckSheet.of(measured(24.50, 24.50, 24.50, 24.50)
                        .mm(ReadingKind.NECK, "neck", NeckPoint.RECEIVER.words(), 24.45)
                        .asked())
                .line(NeckSheet.TENON)
                .orElseThrow();
        assertThat(line.verdict()).isEqualTo(Verdict.STOP);
    }

    @Test
    void a_cork_is_thicker_at_the_tip_where_the_neck_is_thinner() {
        SheetLine line = NeckSheet.of(Asking.alto()
                        .mm(ReadingKind.NECK, "neck", NeckPoint.BORE.words(), 16.0)
                        .mm(ReadingKind.NECK, "neck", NeckPoint.NECK_END.words(), 12.4)
                        .mm(ReadingKind.NECK, "neck", NeckPoint.CORK_BACK.words(), 13.6)
                        .asked())
                .line(NeckSheet.CORK)
                .orElseThrow();
        assertThat(told(line, "at the tip")).isCloseTo(1.8 / 0.88, within(1e-9));
        assertThat(told(line, "at the back")).isCloseTo(1.2 / 0.88, within(1e-9));
        assertThat(told(line, "cut from a sheet of")).isCloseTo(1.8 / 0.88 + 0.3, within(1e-9));
    }

    @Test
    void the_neck_is_straightened_before_its_tenon_is_touched() {
        List<String> order = NeckSheet.of(measured(24.5, 24.4, 24.5, 24.4)
                        .word(ReadingKind.NECK_CHECK, "neck", "pull-down", "clearly")
                        .word(ReadingKind.NECK_CHECK, "neck", "sealed with the screw off", "leaks")
                        .asked())
                .order();
        assertThat(order.get(0)).startsWith("Pulled down");
        assertThat(order.get(1)).startsWith("Tenon");
        assertThat(order.get(2)).startsWith("Screw off");
    }

    @Test
    void a_larger_leak_at_the_same_spot_never_weakens_the_worst_note_less() {
        double last = 0;
        for (double mm : new double[] {0.3, 0.6, 1.2}) {
            double lost = LeakEffect.worst(Asking.ALTO, 182, mm, 1).getFirst().lostDb();
            assertThat(lost).isGreaterThan(last);
            last = lost;
        }
    }

    private static SheetLine tenon(double upper, double across, double lower, double lowerAcross) {
        return NeckSheet.of(measured(upper, across, lower, lowerAcross).asked())
                .line(NeckSheet.TENON)
                .orElseThrow();
    }

    private static Asking measured(double upper, double across, double lower, double lowerAcross) {
        return Asking.alto()
                .mm(ReadingKind.NECK, "neck", NeckPoint.TENON_UPPER.words(), upper)
                .mm(ReadingKind.NECK, "neck", NeckPoint.TENON_UPPER_ACROSS.words(), across)
                .mm(ReadingKind.NECK, "neck", NeckPoint.TENON_LOWER.words(), lower)
                .mm(ReadingKind.NECK, "neck", NeckPoint.TENON_LOWER_ACROSS.words(), lowerAcross);
    }

    private static double told(SheetLine line, String label) {
        return line.numbers().stream()
                .filter(one -> one.label().equals(label))
                .findFirst()
                .orElseThrow()
                .number()
                .value();
    }

    @Test
    void a_leak_found_at_the_receiver_or_the_pip_says_which_notes_it_weakens() {
        SheetAnswer answer = NeckSheet.of(Asking.alto()
                .word(ReadingKind.NECK_CHECK, "neck", "sealed with the screw off", "leaks")
                .word(ReadingKind.NECK_CHECK, "neck", "pip", "leaks at its foot")
                .word(ReadingKind.NECK_CHECK, "neck", "slides", "rocks")
                .asked());
        assertThat(answer.line("sealed with the screw off").orElseThrow().says())
                .contains("weakens most");
        assertThat(answer.line("pip").orElseThrow().says()).contains("weakens most");
        assertThat(answer.line("slides").orElseThrow().says()).doesNotContain("weakens");
    }
}
