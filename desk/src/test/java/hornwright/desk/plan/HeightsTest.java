package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Heights say where they are taken, how they came about, and how sure they are. */
final class HeightsTest {
    private final Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final PlanInputs bare = PlanInputs.of(alto);

    /** Bench arithmetic: a ratio of 2.29 from heights read ± 0.2 twice. */
    @ParameterizedTest
    @CsvSource({"0.4, 0.31", "1.0, 0.12"})
    void a_thin_trial_shim_tells_little(double shim, double share) {
        double without = 8.0;
        Reading reading = Reading.of(
                "r.1", ReadingKind.TRIAL_SHIM, "d", new Observed.TrialShim(shim, without, without - 2.29 * shim, 0.2));
        PlannedNumber ratio = number(Planner.plan(bare.withReadings(List.of(reading))), "foot.d", NumberName.RATIO);
        if (shim == 1.0) {
            assertThat(ratio.value()).isCloseTo(2.29, within(1e-9));
            assertThat(ratio.u() / ratio.value()).isCloseTo(share, within(0.005));
        } else {
            assertThat(ratio.because()).isEqualTo("foot.d/ratio, typical");
            assertThat(0.2 * Math.sqrt(2) / shim / 2.29).isCloseTo(share, within(0.005));
        }
    }

    @Test
    void a_height_at_the_centre_is_lower_than_at_the_front_by_the_arms() {
        Plan plan = Planner.plan(bare);
        for (Cup cup : alto.cups()) {
            double front =
                    number(plan, "pad." + cup.hole(), NumberName.HEIGHT_TARGET).value();
            assertThat(number(plan, "pad." + cup.hole(), NumberName.HEIGHT_CENTRE)
                            .value())
                    .isCloseTo(
                            front
                                    * cup.armMm()
                                    / (cup.armMm() + alto.holeOf(cup).radiusMm()),
                            within(1e-9));
        }
    }

    @Test
    void the_factory_height_is_aimed_at_until_a_person_decides_another() {
        assertThat(number(Planner.plan(bare), "pad.d", NumberName.HEIGHT_TARGET).value())
                .isEqualTo(8.0);
        List<Decision> decided = List.of(new Decision.Height("cup.d", 7.2, "owner likes it low"));
        PlannedNumber target = number(Planner.plan(bare.withDecisions(decided)), "pad.d", NumberName.HEIGHT_TARGET);
        assertThat(target.value()).isEqualTo(7.2);
        assertThat(target.u()).isZero();
    }

    @Test
    void a_cup_that_stands_too_high_gets_a_thicker_foot_by_the_measured_ratio() {
        List<Reading> readings = List.of(
                Reading.of("r.1", ReadingKind.FRONT_HEIGHT, "cup.a", Observed.Amount.mm(6.5, 0.05)),
                Reading.of("r.2", ReadingKind.THICKNESS, "foot.a", Observed.Amount.mm(1.5, 0.02)),
                Reading.of("r.3", ReadingKind.TRIAL_SHIM, "a", new Observed.TrialShim(1.0, 6.5, 3.5, 0.05)));
        Plan plan = Planner.plan(bare.withReadings(readings));
        assertThat(number(plan, "foot.a", NumberName.CHANGE).value()).isCloseTo((6.5 - 5.5) / 3.0, within(1e-9));
        assertThat(number(plan, "foot.a", NumberName.THICKNESS).value()).isCloseTo(1.5 + 1.0 / 3.0, within(1e-9));
    }

    @Test
    void clearance_with_the_key_closed_gives_the_foot_without_any_height() {
        List<Reading> readings = List.of(
                Reading.of("r.1", ReadingKind.FOOT_CLEARANCE, "a", Observed.Amount.mm(3.7638, 0.02)),
                Reading.of("r.2", ReadingKind.AXIS_TO_FOOT, "a", Observed.Amount.mm(11.0, 0.1)),
                Reading.of("r.3", ReadingKind.AXIS_TO_CENTRE, "cup.a", Observed.Amount.mm(24.3, 0.1)),
                Reading.of("r.4", ReadingKind.HOLE, "a", Observed.Amount.mm(20.0, 0.05)));
        assertThat(number(Planner.plan(bare.withReadings(readings)), "foot.a", NumberName.THICKNESS)
                        .value())
                .isCloseTo(2.0, within(0.02));
    }

    @Test
    void new_felt_lets_the_cup_rise_and_kept_felt_does_not() {
        Plan plan = Planner.plan(bare);
        double wanted = number(plan, "pad.low-b", NumberName.HEIGHT_TARGET).value();
        assertThat(number(plan, "pad.low-b", NumberName.HEIGHT_SETTLED).value()).isGreaterThan(wanted + 0.5);
        List<Decision> keep =
                List.of(new Decision.Treat("guard.low-b", hornwright.bench.survey.Treatment.KEEP, null, "sound"));
        Plan kept = Planner.plan(bare.withDecisions(keep));
        assertThat(number(kept, "pad.low-b", NumberName.HEIGHT_SETTLED).value()).isCloseTo(wanted, within(1e-9));
        assertThat(kept.number("guard.low-b", NumberName.CUT_FULL)).isEmpty();
    }

    private static PlannedNumber number(Plan plan, String place, NumberName name) {
        return plan.number(place, name).orElseThrow();
    }
}
