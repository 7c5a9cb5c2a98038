package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.adhesive.AdhesiveSheet;
import hornwright.bench.care.Hazard;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.paper.AdhesiveStrip;
import hornwright.desk.paper.SheetHead;
import org.junit.jupiter.api.Test;

class AdhesiveSheetTest {
    private static final AdhesiveSheet.Batch LOW = AdhesiveSheet.batches(Asking.ALTO).stream()
            .filter(batch -> batch.group() == KeyGroup.LOW && batch.underPads())
            .findFirst()
            .orElseThrow();

    @Test
    void what_the_survey_found_is_read_without_being_said_again() {
        SheetLine line = line(surveyed("shellac").asked());
        assertThat(line.verdict()).isEqualTo(Verdict.ACT);
        assertThat(line.says()).startsWith("found by the survey: shellac at 1");
        assertThat(line.remedies()).hasSize(1);
        assertThat(line.remedies().getFirst().what()).startsWith("Warm until it softens");
        assertThat(line.remedies().getFirst().cautions()).contains(Hazard.HEAT);
    }

    @Test
    void what_is_said_on_the_sheet_outranks_the_survey() {
        SheetLine line = line(surveyed("shellac")
                .word(ReadingKind.ADHESIVE_FOUND, LOW.place(), "", "contact cement")
                .asked());
        assertThat(line.says()).doesNotContain("survey");
        assertThat(line.remedies().getFirst().what()).startsWith("Roll it off");
    }

    @Test
    void the_finish_decides_what_may_touch_it() {
        Asking found = surveyed("contact cement");
        assertThat(line(found.asked()).remedies().getFirst().what()).contains("no ketone");
        found.word(ReadingKind.FINISH_SIGN, AdhesiveSheet.KEYS, AdhesiveSheet.FINISH, "silver plate");
        assertThat(line(found.asked()).remedies().getFirst().what()).contains("sparing");
    }

    @Test
    void the_strip_for_the_wall_has_every_group_its_ways_cautions_and_the_rules_of_the_room() {
        AdhesiveStrip strip = AdhesiveStrip.of(surveyed("shellac").asked(), new SheetHead("Horn", "edit 1"));
        assertThat(strip.parts().stream().mapToInt(part -> part.rows().size()).sum())
                .isEqualTo(AdhesiveSheet.batches(Asking.ALTO).size());
        assertThat(strip.cautions()).anyMatch(caution -> caution.startsWith("Heat: "));
        assertThat(strip.room()).anyMatch(rule -> rule.contains("extinguisher"));
        assertThat(strip.finish()).contains("not said");
    }

    private static SheetLine line(SheetAsked asked) {
        return AdhesiveSheet.of(asked).line(LOW.place()).orElseThrow();
    }

    private static Asking surveyed(String material) {
        return Asking.alto().found(Finding.of(LOW.place(), material, Condition.SOUND, Originality.UNKNOWN));
    }
}
