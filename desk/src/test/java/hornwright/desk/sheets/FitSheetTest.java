package hornwright.desk.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.fit.FitSheet;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.Warning;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Told;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Treatment.Reversible;
import org.junit.jupiter.api.Test;

class FitSheetTest {
    @Test
    void a_horn_nobody_has_felt_has_no_verdict_on_any_key() {
        SheetAnswer answer = FitSheet.of(Asking.alto().asked());
        assertThat(answer.lines())
                .hasSize(Asking.ALTO.keys().size())
                .allMatch(line -> line.verdict() == Verdict.UNTRIED);
    }

    @Test
    void play_at_the_cup_edge_follows_from_clearance_tube_and_arm() {
        var key = Asking.ALTO.keys().get("palm-d");
        var cup = Asking.ALTO.cupOf(key).orElseThrow();
        SheetLine line = line(
                FitSheet.of(Asking.alto()
                        .mm(ReadingKind.HINGE, "palm-d", "across the rod", 0.08)
                        .asked()),
                "palm-d");
        double edge = 0.08 / key.tube().lengthMm() * (cup.armMm() + cup.insideDiameterMm() / 2);
        assertThat(told(line, "at the cup edge")).isCloseTo(edge, within(1e-9));
        assertThat(line.verdict()).isEqualTo(Verdict.ACT);
        assertThat(line.remedies().getFirst().what()).startsWith("Straighten and clean first");
    }

    @Test
    void the_pad_of_a_key_with_measured_play_is_provisional_in_the_plan_until_the_key_is_fitted() {
        Plan plan = Planner.plan(Asking.alto()
                .mm(ReadingKind.HINGE, "palm-d", "across the rod", 0.08)
                .inputs());
        assertThat(plan.warnings()).anyMatch(warning -> warning.sort() == Warning.Sort.KEY_FIT);
        assertThat(plan.places().get("pad.palm-d").provisional()).isNotNull();
        assertThat(plan.number("pad.palm-d", NumberName.PLAY_SHIFT)).isPresent();
        Plan tight = Planner.plan(Asking.alto()
                .mm(ReadingKind.HINGE, "palm-d", "across the rod", 0.02)
                .inputs());
        assertThat(tight.warnings()).noneMatch(warning -> warning.sort() == Warning.Sort.KEY_FIT);
    }

    @Test
    void a_measured_clearance_outranks_the_felt_grade() {
        SheetLine line = line(
                FitSheet.of(Asking.alto()
                        .says(
                                ReadingKind.PLAY,
                                "d",
                                "at the hinge tube",
                                new Observed.Play(PlayGrade.LOOSE, PlayGrade.NONE))
                        .mm(ReadingKind.HINGE, "d", "across the rod", 0.02)
                        .asked()),
                "d");
        assertThat(told(line, "clearance")).isEqualTo(0.02);
        assertThat(line.verdict()).isNotEqualTo(Verdict.ACT);
    }

    @Test
    void a_tube_that_can_be_closed_on_too_little_of_its_length_is_bushed_or_gets_a_larger_rod() {
        double length = Asking.ALTO.keys().get("d").tube().lengthMm();
        assertThat(ways(0.06, 0.75 * length)).anyMatch(way -> way.what().startsWith("Close the tube"));
        assertThat(ways(0.06, 0.65 * length)).noneMatch(way -> way.what().startsWith("Close the tube"));
        assertThat(ways(0.20, 0.95 * length)).noneMatch(way -> way.what().startsWith("Close the tube"));
    }

    @Test
    void closing_a_tube_cannot_be_undone_and_says_so_with_its_caution() {
        Remedy close = ways(0.06, 30).stream()
                .filter(way -> way.what().startsWith("Close the tube"))
                .findFirst()
                .orElseThrow();
        assertThat(close.undo()).isEqualTo(Reversible.NO);
        assertThat(close.cautions()).isNotEmpty();
        assertThat(close.limit()).contains("free turn").contains("70 in 100");
    }

    @Test
    void play_along_the_rod_has_its_own_band() {
        assertThat(end(0.05)).isEqualTo(Verdict.GOOD);
        assertThat(end(0.08)).isEqualTo(Verdict.MAY_STAY);
        assertThat(end(0.12)).isEqualTo(Verdict.ACT);
    }

    @Test
    void a_pivot_is_never_swedged() {
        SheetLine line = line(
                FitSheet.of(Asking.alto()
                        .mm(ReadingKind.HINGE, "neck-octave", "across the rod", 0.09)
                        .asked()),
                "neck-octave");
        assertThat(line.remedies()).anyMatch(way -> way.what().contains("pivots"));
        assertThat(line.remedies()).noneMatch(way -> way.what().startsWith("Close the tube"));
    }

    private static java.util.List<Remedy> ways(double clearance, double closable) {
        return line(
                        FitSheet.of(Asking.alto()
                                .mm(ReadingKind.HINGE, "d", "across the rod", clearance)
                                .mm(ReadingKind.HINGE, "d", "tube that can be closed", closable)
                                .asked()),
                        "d")
                .remedies();
    }

    private static Verdict end(double along) {
        return line(
                        FitSheet.of(Asking.alto()
                                .mm(ReadingKind.HINGE, "d", "along the rod", along)
                                .asked()),
                        "d")
                .verdict();
    }

    private static SheetLine line(SheetAnswer answer, String id) {
        return answer.line(id).orElseThrow();
    }

    private static double told(SheetLine line, String label) {
        return line.numbers().stream()
                .filter(told -> told.label().equals(label))
                .map(Told::number)
                .findFirst()
                .orElseThrow()
                .value();
    }
}
