package hornwright.engines.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.action.KeyMotion.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class ActionPropertyTest {
    private static final Bumper FELT = Bumper.givingBack(6e6, 1.5, 0.5, 0.3);

    private static ActionInput key(double inertia, double torque, Bumper bumper, double friction) {
        return new ActionInput(inertia, torque, 0.02, 0.005, 0.025, 0.012, 0.03, bumper, friction);
    }

    private static ActionInput some(Random random) {
        Bumper bumper = Bumper.givingBack(
                Math.pow(10, 4 + 4 * random.nextDouble()),
                1 + 2 * random.nextDouble(),
                0.1 + 0.8 * random.nextDouble(),
                0.3);
        return new ActionInput(
                1e-6 + 5e-6 * random.nextDouble(),
                0.002 + 0.02 * random.nextDouble(),
                0.03 * random.nextDouble(),
                0.002 + 0.006 * random.nextDouble(),
                0.025,
                0.012,
                null,
                bumper,
                random.nextBoolean() ? 0 : 2e-3 * random.nextDouble());
    }

    @Test
    void energy_never_grows() {
        Random random = new Random(1);
        for (int trial = 0; trial < 200; trial++) {
            Slider slider = Slider.of(some(random));
            double scale = slider.energy(0, 0) - slider.energy(slider.balance(), 0);
            KeyMotion.run(slider, leg -> {
                double before = slider.energy(leg.from().place(), leg.from().speed());
                double after = slider.energy(leg.to().place(), leg.to().speed());
                assertThat(after).isLessThanOrEqualTo(before + 1e-10 * scale);
                assertThat(leg.to().time()).isGreaterThanOrEqualTo(leg.from().time());
                assertThat((leg.to().place() - leg.from().place())
                                * (leg.from().speed() + leg.to().speed()))
                        .isGreaterThanOrEqualTo(0);
            });
        }
    }

    @Test
    void without_friction_a_flight_keeps_its_energy() {
        Slider slider = Slider.of(key(2e-6, 0.012, FELT, 0));
        double scale = slider.energy(0, 0) - slider.energy(slider.balance(), 0);
        KeyMotion.run(slider, leg -> {
            if (leg instanceof Leg.Flight) {
                double before = slider.energy(leg.from().place(), leg.from().speed());
                double after = slider.energy(leg.to().place(), leg.to().speed());
                assertThat(after).isCloseTo(before, within(1e-12 * scale));
            }
        });
    }

    @Test
    void it_comes_to_rest_where_the_pull_vanishes_or_friction_holds_it() {
        Random random = new Random(2);
        for (int trial = 0; trial < 300; trial++) {
            Slider slider = Slider.of(some(random));
            Leg[] last = new Leg[1];
            if (KeyMotion.run(slider, leg -> last[0] = leg) == End.RESTS && last[0] != null) {
                double place = last[0].to().place();
                if (slider.friction() > 0) {
                    double lowest = slider.energy(slider.balance(), 0);
                    boolean spent = slider.energy(place, 0) - lowest <= 1e-8 * (slider.energy(0, 0) - lowest);
                    double pull = Math.abs(slider.pull(place));
                    assertThat(spent || pull < slider.friction() * (1 + 1e-9) + 2e-6 * slider.push())
                            .isTrue();
                } else {
                    assertThat(slider.pull(slider.balance())).isCloseTo(0, within(1e-8 * slider.push()));
                }
            }
        }
    }

    /** Common practice: a heavy resonator or cup makes a key bounce. */
    @Test
    void a_heavier_resonator_bounces_more_and_opens_later() {
        double bounce = 0;
        double opening = 0;
        for (double inertia = 1e-6; inertia < 6e-6; inertia += 5e-7) {
            ActionResult key = Action.reckon(key(inertia, 0.012, FELT, 0.0005));
            assertThat(Objects.requireNonNull(key.opening())).isGreaterThan(opening);
            assertThat(key.rebounds().getFirst().height()).isGreaterThan(bounce);
            opening = key.opening();
            bounce = key.rebounds().getFirst().height();
        }
    }

    @Test
    void a_stronger_spring_opens_sooner_and_settles_sooner() {
        double opening = 1;
        double settled = 1;
        for (double torque = 0.008; torque < 0.03; torque += 0.002) {
            ActionResult key = Action.reckon(key(2e-6, torque, FELT, 0.0005));
            assertThat(Objects.requireNonNull(key.opening())).isLessThan(opening);
            assertThat(Objects.requireNonNull(key.settled())).isLessThan(settled);
            opening = key.opening();
            settled = key.settled();
        }
    }

    @Test
    void a_bumper_that_gives_less_back_bounces_less() {
        double bounce = 1;
        for (double e = 0.85; bounce > 0; e -= 0.05) {
            ActionResult key = Action.reckon(key(2e-6, 0.012, Bumper.givingBack(6e6, 1.5, e, 0.3), 0.0005));
            double first =
                    key.rebounds().isEmpty() ? 0 : key.rebounds().getFirst().height();
            assertThat(first).isLessThan(bounce);
            assertThat(key.bounces()).isEqualTo(first >= 1e-4);
            bounce = first;
        }
    }

    @Test
    void a_key_held_by_friction_never_starts() {
        ActionResult stuck = Action.reckon(key(2e-6, 0.001, FELT, 0.001));
        assertThat(stuck.opening()).isNull();
        assertThat(stuck.settled()).isZero();
        assertThat(stuck.rebounds()).isEmpty();
        assertThat(stuck.bounces()).isFalse();
    }

    @Test
    void a_weak_spring_stops_short_of_its_stop_where_friction_catches_it() {
        ActionInput weak = new ActionInput(2e-6, 0.003, 0.05, 0.005, 0.025, 0.012, null, FELT, 0.001);
        ActionResult key = Action.reckon(weak);
        assertThat(key.opening()).isNull();
        assertThat(key.settled()).isPositive();
        Slider slider = Slider.of(weak);
        List<Leg> legs = new ArrayList<>();
        assertThat(KeyMotion.run(slider, legs::add)).isEqualTo(End.RESTS);
        double reach = 2 * (slider.push() - slider.friction()) / slider.rate();
        assertThat(legs).hasSize(1);
        assertThat(legs.getFirst().to().place()).isCloseTo(reach, Percentage.withPercentage(1e-9));
    }

    @Test
    void a_key_whose_spring_ends_before_the_stop_swings_for_ever_without_friction() {
        ActionInput swinging = new ActionInput(2e-6, 0.005, 0.04, 0.005, 0.025, 0.012, null, FELT, 0);
        ActionResult key = Action.reckon(swinging);
        assertThat(key.opening()).isPositive();
        assertThat(key.settled()).isNull();
        assertThat(key.rebounds()).hasSizeBetween(50, 100);
        ActionInput short_ = new ActionInput(2e-6, 0.003, 0.04, 0.005, 0.025, 0.012, null, FELT, 0);
        assertThat(Action.reckon(short_).opening()).isNull();
        assertThat(Action.reckon(short_).settled()).isNull();
    }

    @Test
    void touch_is_spring_and_friction_over_the_touch_arm() {
        ActionResult key = Action.reckon(key(2e-6, 0.012, FELT, 0.0015));
        assertThat(Objects.requireNonNull(key.touchForce())).isCloseTo(0.45, within(1e-15));
    }

    @Test
    void rebounds_come_in_order_and_shrink() {
        Random random = new Random(4);
        for (int trial = 0; trial < 200; trial++) {
            ActionResult key = Action.reckon(some(random));
            for (int i = 1; i < key.rebounds().size(); i++) {
                assertThat(key.rebounds().get(i).height())
                        .isLessThan(key.rebounds().get(i - 1).height());
                assertThat(key.rebounds().get(i).at())
                        .isGreaterThan(key.rebounds().get(i - 1).at());
            }
        }
    }

    @Test
    void restitution_and_damping_invert_each_other() {
        for (double e = 0.01; e < 1; e += 0.01) {
            assertThat(Restitution.at(Restitution.dampingNumber(e))).isCloseTo(e, within(1e-12));
        }
        double nearlyElastic = Restitution.dampingNumber(1 - 1e-5);
        assertThat(nearlyElastic).isCloseTo(1.5e-5, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> Restitution.dampingNumber(1));
    }
}
