package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.rim.RimSheet;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import hornwright.engines.seat.PadStiffness;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Seat;
import hornwright.engines.seat.SeatInput;
import java.util.List;
import org.junit.jupiter.api.Test;

class RimSheetTest {
    @Test
    void a_rim_is_good_may_stay_or_is_levelled_by_its_worst_gap() {
        assertThat(alto(0.05).verdict()).isEqualTo(Verdict.GOOD);
        assertThat(alto(0.07).verdict()).isEqualTo(Verdict.MAY_STAY);
        assertThat(alto(0.12).verdict()).isEqualTo(Verdict.ACT);
        assertThat(alto(0.12).says()).contains("4 o'clock");
    }

    @Test
    void leaving_it_comes_first_and_the_file_last_with_the_owners_yes() {
        assertThat(alto(0.12).remedies().getFirst().what()).startsWith("Leave the rim");
        assertThat(alto(0.12).remedies().getLast().limit()).contains("owner's yes");
        assertThat(alto(0.07).remedies()).noneMatch(way -> way.what().contains("file"));
    }

    @Test
    void a_rolled_rim_is_never_filed_and_is_lifted_no_further_than_five_hundredths() {
        SheetLine line = line(Asking.of("tarrant-loe-tenor"), "d", 0.15);
        assertThat(line.remedies()).noneMatch(way -> way.what().contains("flat file"));
        assertThat(line.remedies()).anyMatch(way -> way.limit().startsWith("0.05 mm, then float"));
        assertThat(RimSheet.of(Asking.of("tarrant-loe-tenor")
                                .word(ReadingKind.RIM_CHECK, "d", "choice", "file")
                                .asked())
                        .line("d")
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.STOP);
    }

    @Test
    void no_metal_comes_off_a_horn_for_display() {
        assertThat(line(Asking.alto().forUse(AgreedUse.DISPLAY), "d", 0.15).remedies())
                .noneMatch(way -> way.what().contains("flat file"));
        assertThat(line(
                                Asking.alto()
                                        .forUse(AgreedUse.DISPLAY)
                                        .word(ReadingKind.RIM_CHECK, "d", "choice", "file"),
                                "d",
                                0.15)
                        .verdict())
                .isEqualTo(Verdict.STOP);
    }

    @Test
    void a_ring_that_leaks_stops_the_levelling() {
        assertThat(line(Asking.alto().word(ReadingKind.RIM_CHECK, "d", "ring", "leaks"), "d", 0.15)
                        .verdict())
                .isEqualTo(Verdict.STOP);
    }

    @Test
    void metal_taken_off_makes_the_pad_stand_out_by_as_much_and_ends_at_its_stop() {
        SheetLine some = line(Asking.alto().mm(ReadingKind.METAL_OFF, "d", "in all", 0.06), "d", 0.06);
        assertThat(some.numbers()).anySatisfy(told -> {
            assertThat(told.label()).isEqualTo("pad stands out more by");
            assertThat(told.number().value()).isEqualTo(0.06);
        });
        assertThat(line(Asking.alto().mm(ReadingKind.METAL_OFF, "d", "in all", 0.16), "d", 0.06)
                        .verdict())
                .isEqualTo(Verdict.STOP);
    }

    @Test
    void the_force_that_closes_a_rim_low_on_two_sides_is_that_of_the_seat_engine() {
        double gap = 0.08;
        var cup = Asking.ALTO.cups().get("cup.d");
        double radius = Asking.ALTO.holeOf(cup).radiusMm();
        double told = alto(gap).numbers().stream()
                .filter(number -> number.label().equals("force to close over it"))
                .findFirst()
                .orElseThrow()
                .number()
                .value();
        SeatInput seat = new SeatInput(
                radius / 1e3,
                new Profile.Harmonics(List.of(new Profile.Harmonic(2, gap / 2 / 1e3, 0))),
                new Profile.Harmonics(List.of()),
                PadStiffness.even(cup.seatStiffnessMPa() * 1e6),
                new SeatInput.Mount.Free(0.5),
                1.2e-3,
                1000);
        assertThat(told).isCloseTo(Seat.reckon(seat).sealing(), within(1e-6));
    }

    private static SheetLine alto(double gap) {
        return line(Asking.alto(), "d", gap);
    }

    private static SheetLine line(Asking asking, String hole, double gap) {
        return RimSheet.of(
                        asking.says(ReadingKind.RIM_GAP, hole, "under a flat disc", new Observed.RimGap(gap, 0.01, 4))
                                .asked())
                .line(hole)
                .orElseThrow();
    }
}
