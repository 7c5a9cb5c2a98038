package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.octave.OctaveSheet;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.ReadingKind;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class OctaveSheetTest {
    private static final String RING = "link.octave-thumb-to-neck-octave";
    private static final String ARM = "link.octave-thumb-to-body-octave";

    @Test
    void a_mechanism_as_it_left_the_factory_is_right_in_all_four_states() {
        SheetAnswer answer = OctaveSheet.of(built(0).asked());
        assertThat(answer.order()).isEmpty();
        assertThat(answer.lines().stream().filter(line -> line.id().startsWith(RING)))
                .hasSize(4)
                .allMatch(line -> line.verdict() == Verdict.GOOD);
    }

    @Test
    void a_ring_that_sits_too_close_is_bent_away_so_far_that_every_state_is_right() {
        SheetAnswer answer = OctaveSheet.of(built(-0.25).asked());
        assertThat(answer.line(OctaveSheet.id(RING, "thumb down, G down"))
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.ACT);
        assertThat(answer.order().getFirst())
                .contains("bend it away by 0.15 to 0.45 mm")
                .contains("thumb down, G up, the vent opens less");
    }

    @Test
    void a_ring_that_never_reaches_the_vent_is_bent_closer_and_says_what_is_left_elsewhere() {
        Asking asking = Asking.alto()
                .mm(ReadingKind.CLEARANCE, RING, "thumb up, G up", 0.7)
                .mm(ReadingKind.CLEARANCE, RING, "thumb down, G up", 0.13)
                .mm(ReadingKind.CLEARANCE, RING, "thumb down, G down", 0.5);
        SheetAnswer answer = OctaveSheet.of(asking.asked());
        assertThat(answer.order().getFirst())
                .contains("bend it closer by 0.10 to 0.20 mm")
                .contains("thumb up, G up, 0.60 mm");
    }

    @Test
    void states_that_ask_for_opposite_bends_are_told_so() {
        Asking asking = Asking.alto()
                .mm(ReadingKind.CLEARANCE, RING, "thumb down, G up", 0.2)
                .mm(ReadingKind.CLEARANCE, RING, "thumb down, G down", 0.1);
        assertThat(OctaveSheet.of(asking.asked()).order().getFirst()).contains("no bend of it alone suits every state");
    }

    @Test
    void the_body_arm_is_set_before_the_neck_ring() {
        Asking asking = built(-0.25).mm(ReadingKind.CLEARANCE, ARM, "thumb up, G up", 0.9);
        assertThat(OctaveSheet.of(asking.asked()).order().getFirst()).startsWith("octave thumb lever opens body");
    }

    @Test
    void the_low_table_says_what_each_wrong_clearance_does() {
        Asking asking = Asking.alto()
                .mm(ReadingKind.CLEARANCE, "link.table-b-to-g-sharp-lever", "at rest", 0)
                .mm(ReadingKind.CLEARANCE, "link.table-b-to-low-c-sharp", "key down", 0.2)
                .mm(ReadingKind.LOST_MOTION, "table-b", "at the fingertip", 0.35);
        SheetAnswer answer = OctaveSheet.of(asking.asked());
        assertThat(answer.line("link.table-b-to-g-sharp-lever at rest")
                        .orElseThrow()
                        .says())
                .contains("G♯ is let go");
        assertThat(answer.line("link.table-b-to-low-c-sharp key down")
                        .orElseThrow()
                        .says())
                .contains("low C♯ is not held shut");
        assertThat(answer.line("table-b").orElseThrow().verdict()).isEqualTo(Verdict.ACT);
    }

    @Test
    void the_low_table_is_set_from_what_holds_low_c_sharp_to_the_tabs_and_says_what_it_does_elsewhere() {
        Asking asking = Asking.alto()
                .mm(ReadingKind.CLEARANCE, "link.table-b-to-g-sharp-lever", "at rest", 0)
                .mm(ReadingKind.CLEARANCE, "link.table-b-to-low-c-sharp", "key down", 0.2);
        assertThat(OctaveSheet.of(asking.asked()).order())
                .satisfiesExactly(
                        first -> assertThat(first)
                                .contains("low C♯", "bend it closer by 0.17 mm or a little more", "try again", "G♯"),
                        second -> assertThat(second).contains("bend it away by 0.05 to 0.30 mm", "at rest, 0.05 mm"));
        assertThat(OctaveSheet.of(Asking.alto()
                                .mm(ReadingKind.CLEARANCE, "link.table-b-to-g-sharp-lever", "at rest", 0.15)
                                .asked())
                        .order())
                .isEmpty();
    }

    @Test
    void a_tab_clearance_is_longer_under_the_finger_by_the_ratio_of_its_arms() {
        var link = Asking.ALTO.links().get("link.table-b-to-g-sharp-lever");
        double arm = Objects.requireNonNull(Asking.ALTO.keys().get("table-b").touch())
                .armMm();
        var line = OctaveSheet.of(Asking.alto()
                        .mm(ReadingKind.CLEARANCE, link.id(), "at rest", 0.12)
                        .asked())
                .line(link.id() + " at rest")
                .orElseThrow();
        assertThat(line.numbers().getLast().number().value()).isEqualTo(0.12 * arm / link.driverArmMm());
    }

    /** Everything as built, the neck ring off by so much where it is free. */
    private static Asking built(double ringOff) {
        Asking asking = Asking.alto();
        for (OctaveState state : Asking.ALTO.octaveStates()) {
            for (Clearance clearance : state.clearances()) {
                boolean off = clearance.link().equals(RING) && clearance.mm() > 0;
                double mm = clearance.mm() + (off ? ringOff : 0);
                asking.mm(ReadingKind.CLEARANCE, clearance.link(), state.name(), mm);
            }
        }
        return asking;
    }
}
