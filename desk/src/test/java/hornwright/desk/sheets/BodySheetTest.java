package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.adhesive.AdhesiveSheet;
import hornwright.bench.body.BodySheet;
import hornwright.bench.body.FinishSheet;
import hornwright.bench.body.FinishSign;
import hornwright.bench.care.AdhesiveRemoval.Adhesive;
import hornwright.bench.care.Hazard;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.ReadingKind;
import org.junit.jupiter.api.Test;

class BodySheetTest {
    @Test
    void pins_stand_from_the_neck_down_and_leaving_comes_first() {
        SheetAnswer answer = BodySheet.of(Asking.alto()
                .says(ReadingKind.PIN, "pin.2", "", pin(PinSort.DENT, 800, PinAccess.INSIDE, PinChoice.MEND))
                .says(ReadingKind.PIN, "pin.1", "", pin(PinSort.CRACK, 120, PinAccess.OUTSIDE, PinChoice.WATCH))
                .asked());
        assertThat(answer.lines()).extracting(SheetLine::id).containsExactly("pin.1", "pin.2");
        assertThat(answer.lines())
                .allMatch(line -> line.remedies().getFirst().what().startsWith("Leave it"));
        assertThat(answer.line("pin.2").orElseThrow().verdict()).isEqualTo(Verdict.ACT);
    }

    @Test
    void what_cannot_be_reached_is_not_mended() {
        SheetAnswer answer = BodySheet.of(Asking.alto()
                .says(ReadingKind.PIN, "pin.1", "", pin(PinSort.DENT, 800, PinAccess.NONE, PinChoice.MEND))
                .asked());
        assertThat(answer.lines().getFirst().verdict()).isEqualTo(Verdict.STOP);
        assertThat(answer.lines().getFirst().remedies()).hasSize(1);
    }

    @Test
    void every_sort_of_pin_that_is_soldered_carries_the_caution_of_lead() {
        for (PinSort sort : new PinSort[] {PinSort.CRACK, PinSort.OLD_SOLDER, PinSort.LIFTED_RING}) {
            assertThat(BodySheet.of(Asking.alto()
                                    .says(
                                            ReadingKind.PIN,
                                            "pin.1",
                                            "",
                                            pin(sort, 500, PinAccess.OUTSIDE, PinChoice.MEND))
                                    .asked())
                            .lines()
                            .getFirst()
                            .remedies()
                            .getLast()
                            .cautions())
                    .contains(Hazard.SOLDERING);
        }
    }

    @Test
    void two_signs_make_a_later_finish_likely_and_one_only_possible() {
        Asking one = Asking.alto()
                .word(ReadingKind.FINISH_SIGN, "finish", FinishSign.EDGES.point(), "rounded by buffing")
                .word(ReadingKind.FINISH_SIGN, "finish", FinishSign.STAMPS.point(), "crisp");
        assertThat(FinishSheet.of(one.asked()).summary()).contains("possible").doesNotContain("likely");
        one.word(ReadingKind.FINISH_SIGN, "finish", FinishSign.LACQUER_IN_ENGRAVING.point(), "lies in the lines");
        assertThat(FinishSheet.of(one.asked()).summary()).contains("2 signs").contains("likely");
    }

    @Test
    void a_neck_with_another_number_cannot_be_original_to_its_body_unless_explained() {
        SheetAnswer answer = FinishSheet.of(Asking.alto()
                .word(ReadingKind.STAMP, "body", "", "207")
                .word(ReadingKind.STAMP, "neck", "", "311")
                .asked());
        assertThat(answer.line("stamp.neck").orElseThrow().says()).contains("cannot be original to this body");
        assertThat(answer.line("stamp.body").orElseThrow().verdict()).isEqualTo(Verdict.GOOD);
    }

    @Test
    void a_group_with_pearls_is_never_warmed_and_shellac_on_spirit_lacquer_never_meets_alcohol() {
        assertThat(AdhesiveSheet.batches(Asking.ALTO))
                .anyMatch(batch -> batch.underPads() && batch.group() == KeyGroup.LOWER_STACK && batch.places() == 4)
                .anyMatch(batch -> !batch.underPads());
        for (AdhesiveSheet.Batch batch : AdhesiveSheet.batches(Asking.ALTO)) {
            SheetLine line = AdhesiveSheet.of(Asking.alto()
                            .word(ReadingKind.FINISH_SIGN, "keys", "finish", "spirit lacquer")
                            .word(ReadingKind.ADHESIVE_FOUND, batch.place(), "", Adhesive.SHELLAC.word())
                            .asked())
                    .line(batch.place())
                    .orElseThrow();
            boolean pearls = Asking.ALTO.places().stream()
                    .anyMatch(place -> place.id().startsWith("pearl.")
                            && Asking.ALTO
                                    .groupOf(place)
                                    .filter(of -> of == batch.group())
                                    .isPresent());
            if (pearls) {
                assertThat(line.remedies().getFirst().cautions()).doesNotContain(Hazard.HEAT);
                assertThat(line.remedies().getFirst().what()).contains("No alcohol");
            }
        }
    }

    private static Observed pin(PinSort sort, double at, PinAccess access, PinChoice choice) {
        return new Observed.Pin(sort, at, 20, 12, null, access, choice);
    }
}
