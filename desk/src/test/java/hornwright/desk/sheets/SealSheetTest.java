package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.seal.LeakSite;
import hornwright.bench.seal.LeakSites;
import hornwright.bench.seal.SealSheet;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Unit;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class SealSheetTest {
    @Test
    void a_horn_is_never_passed_on_its_total_while_a_site_is_untried() {
        Asking asking = everySiteSeals(1).says(ReadingKind.LEAK, "horn", "", flow(0.1));
        SheetAnswer answer = SealSheet.of(asking.asked());
        assertThat(answer.summary())
                .contains("untried")
                .contains("Nothing is passed before")
                .doesNotContain("The horn seals");
        assertThat(answer.line(SealSheet.TOTAL).orElseThrow().verdict()).isNotEqualTo(Verdict.GOOD);
    }

    @Test
    void a_horn_seals_when_every_site_was_tried_and_seals() {
        assertThat(SealSheet.of(everySiteSeals(0).asked()).summary()).startsWith("The horn seals");
    }

    @Test
    void the_total_is_told_as_one_hole() {
        SheetLine total = SealSheet.of(Asking.alto()
                        .says(ReadingKind.LEAK, "horn", "", flow(12.5))
                        .asked())
                .line(SealSheet.TOTAL)
                .orElseThrow();
        double jet = Math.sqrt(2 * 1000 / 1.204);
        double hole = Math.sqrt(4 / Math.PI * 12.5e-6 / (0.61 * jet)) * 1e3;
        assertThat(total.numbers().getLast().number().value()).isCloseTo(hole, within(0.001));
        assertThat(total.verdict()).isEqualTo(Verdict.ACT);
    }

    @Test
    void a_pad_that_leaks_says_which_notes_it_weakens_and_those_have_it_shut() {
        SheetAnswer answer = SealSheet.of(Asking.alto()
                .word(ReadingKind.LEAK_SITE, "pad.palm-d", "", "leaks")
                .asked());
        assertThat(answer.line("pad.palm-d").orElseThrow().says()).contains("weakens most");
        assertThat(answer.summary()).contains("Leaks at palm D pad");
    }

    @Test
    void a_site_that_sealed_is_untried_again_once_its_arm_was_bent() {
        Asking asking = everySiteSeals(0);
        SheetAsked bent = SheetAsked.of(
                asking.inputs().withWorkDone(List.of(new WorkDone("w1", WorkKind.ARM_BENT, "palm-d", null))));
        SheetAnswer answer = SealSheet.of(bent);
        assertThat(answer.line("pad.palm-d").orElseThrow().verdict()).isEqualTo(Verdict.UNTRIED);
        assertThat(answer.line("pad.d").orElseThrow().verdict()).isEqualTo(Verdict.GOOD);
        assertThat(answer.summary()).contains("One site is untried: palm D pad");
    }

    @Test
    void untried_sites_stand_together_by_the_way_they_are_tried() {
        assertThat(SealSheet.of(Asking.alto().asked()).order()).anyMatch(line -> line.contains("light inside"));
    }

    private static Asking everySiteSeals(int but) {
        Asking asking = Asking.alto();
        LeakSites.of(Asking.ALTO).list().stream()
                .skip(but)
                .map(LeakSite::id)
                .forEach(site -> asking.word(ReadingKind.LEAK_SITE, site, "", "seals"));
        return asking;
    }

    private static Observed flow(double mLPerS) {
        return new Observed.Amount(mLPerS, Unit.MILLILITRES_PER_SECOND, 0.5);
    }
}
