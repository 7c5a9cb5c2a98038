package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Limits;
import hornwright.engines.linkage.Mechanism.Link;
import hornwright.engines.linkage.Mechanism.Sense;
import hornwright.engines.linkage.Mechanism.Spring;
import hornwright.engines.linkage.Mechanism.Stop;
import hornwright.engines.linkage.Mechanism.Towards;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Levers small enough for pencil and paper. */
class StaticsByHandTest {
    private static final Mechanism.Key F = new Mechanism.Key("f", 0);
    private static final Mechanism.Key G = new Mechanism.Key("g", 0);

    private static Mechanism one(List<Cup> cups, List<Stop> stops, List<Spring> springs) {
        return new Mechanism(List.of(F), cups, stops, List.of(), springs);
    }

    private static double[] rest(Mechanism mechanism, Press... presses) {
        return Balance.of(mechanism).under(List.of(presses)).rotation();
    }

    @Test
    void two_one_sided_springs_share_a_torque_as_worked_by_hand() {
        Ref ref = Ref.read("linkage/lever");
        Mechanism lever = one(
                List.of(new Cup("one", "f", 0.03, 2000, 0), new Cup("two", "f", 0.02, 5000, 1e-4)),
                List.of(),
                List.of());
        Equilibrium rest = Balance.of(lever).under(List.of(new Press("f", 0.5, 0.04)));
        ref.check("rotation_rad", -rest.rotation()[0], 1);
        ref.check("force1_N", rest.cups().force()[0], 1);
        ref.check("force2_N", rest.cups().force()[1], 1);
    }

    @Test
    void an_open_spring_without_a_stop_rests_where_it_is_spent() {
        Mechanism free = one(List.of(), List.of(), List.of(new Spring("f", 0.012, 0.02, Towards.OPEN)));
        assertThat(rest(free)[0]).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void a_foot_holds_an_open_key_and_gives_by_what_the_spring_has_left() {
        Stop foot = new Stop("foot", "f", 0.012, 4e-3, 1.6e-3, 2e5, Limits.OPENING);
        Equilibrium rest = Balance.of(
                        one(List.of(), List.of(foot), List.of(new Spring("f", 0.012, 0.02, Towards.OPEN))))
                .atRest();
        double q = rest.rotation()[0];
        // torque 0.012 - 0.02 q = 2e5 (0.012 q - 0.0024) 0.012
        assertThat(q).isCloseTo((0.012 + 2e5 * 0.0024 * 0.012) / (0.02 + 2e5 * 0.012 * 0.012), within(1e-12));
        assertThat(rest.stops().force()[0] * 0.012).isCloseTo(0.012 - 0.02 * q, within(1e-12));
        assertThat(rest.stops().gap()[0]).isNegative();
    }

    @Test
    void a_closing_stop_ends_the_pressing_of_a_lever() {
        Stop stop = new Stop("end", "f", 0.01, 3e-3, 1e-3, 1e5, Limits.CLOSING);
        Mechanism lever = one(List.of(), List.of(stop), List.of(new Spring("f", 0.01, 0.02, Towards.OPEN)));
        // 1 N at 20 mm against 0.01 - 0.02 q and 1e5 (-(0.002 + 0.01 q)) 0.01
        double q = (0.01 - 0.02 - 1e5 * 0.002 * 0.01) / (0.02 + 1e5 * 0.01 * 0.01);
        assertThat(rest(lever, new Press("f", 1, 0.02))[0]).isCloseTo(q, within(1e-12));
    }

    @Test
    void a_closing_spring_presses_the_pad_and_an_opening_touch_lifts_it() {
        Cup cup = new Cup("cup", "f", 0.025, 8000, 0);
        Mechanism shut = one(List.of(cup), List.of(), List.of(new Spring("f", 0.02, 0.02, Towards.CLOSED)));
        double q = -0.02 / (0.02 + 8000 * 0.025 * 0.025);
        assertThat(rest(shut)[0]).isCloseTo(q, within(1e-12));
        // 1 N at -30 mm opens against torque + rate q
        assertThat(rest(shut, new Press("f", 1, -0.03))[0]).isCloseTo((0.03 - 0.02) / 0.02, within(1e-12));
    }

    @Test
    void a_twisting_key_lets_its_cup_stand_open_by_flex_times_the_torque_carried() {
        Cup cup = new Cup("cup", "f", 0.03, 8000, 0);
        Mechanism stiff = one(List.of(cup), List.of(), List.of());
        Mechanism soft =
                new Mechanism(List.of(new Mechanism.Key("f", 0.05)), List.of(cup), List.of(), List.of(), List.of());
        Press press = new Press("f", 1, 0.03);
        Equilibrium still = Balance.of(stiff).under(List.of(press));
        Equilibrium twisted = Balance.of(soft).under(List.of(press));
        // with nothing else to carry, the pad takes the whole torque either way; only the touch goes further down
        assertThat(twisted.cups().force()[0]).isCloseTo(1, within(1e-12));
        assertThat(twisted.cups().gap()[0]).isCloseTo(still.cups().gap()[0], within(1e-15));
        assertThat(twisted.rotation()[0]).isCloseTo(still.rotation()[0] - 0.05 * 0.03, within(1e-12));
    }

    private static Mechanism two(Link link, Spring... springs) {
        List<Cup> cups = List.of(new Cup("cup.f", "f", 0.03, 8000, 0), new Cup("cup.g", "g", 0.028, 8000, 0));
        return new Mechanism(List.of(F, G), cups, List.of(), List.of(link), List.of(springs));
    }

    @Test
    void a_closing_link_carries_its_force_at_both_arms() {
        Link link = new Link("f>g", "f", 0.014, "g", 0.013, 1e-3, 1e-3, 3e5, Sense.CLOSES);
        Spring open = new Spring("g", 0.01, 0.02, Towards.OPEN);
        Equilibrium at = Balance.of(two(link, open)).under(List.of(new Press("f", 1.2, 0.035)));
        double pushed = at.links().force()[0];
        double[] q = at.rotation();
        assertThat(pushed).isPositive();
        assertThat(1.2 * 0.035).isCloseTo(pushed * 0.014 + at.cups().force()[0] * 0.03, within(1e-12));
        assertThat(pushed * 0.013 + at.cups().force()[1] * -0.028).isCloseTo(0.01 - 0.02 * q[1], within(1e-12));
        assertThat(at.links().gap()[0]).isCloseTo(0.014 * q[0] - 0.013 * q[1], within(1e-15));
    }

    @Test
    void an_opening_link_lifts_its_follower_once_the_lost_motion_is_taken_up() {
        Link link = new Link("f>g", "f", 0.013, "g", 0.012, 0.9e-3, 0.8e-3, 3e5, Sense.OPENS);
        Spring shut = new Spring("g", 0.01, 0.02, Towards.CLOSED);
        Spring lever = new Spring("f", 0.003, 0.02, Towards.OPEN);
        Mechanism lifting = new Mechanism(
                List.of(F, G),
                List.of(new Cup("cup.g", "g", 0.028, 8000, 0)),
                List.of(new Stop("end", "f", 0.012, 2e-3, 2e-3, 1e5, Limits.OPENING)),
                List.of(link),
                List.of(lever, shut));
        Balance balance = Balance.of(lifting);
        assertThat(balance.atRest().links().force()[0]).isZero();
        Equilibrium down = balance.under(List.of(new Press("f", 1.2, 0.02)));
        double[] q = down.rotation();
        assertThat(q[0]).isNegative();
        assertThat(q[1]).isPositive();
        assertThat(down.links().gap()[0]).isCloseTo(1e-4 + 0.013 * q[0] + 0.012 * q[1], within(1e-15));
        assertThat(down.links().force()[0] * 0.012).isCloseTo(0.01 + 0.02 * q[1], within(1e-12));
    }

    @Test
    void a_key_nothing_acts_on_stays_where_it_is() {
        assertThat(rest(new Mechanism(List.of(F, G), List.of(), List.of(), List.of(), List.of())))
                .containsExactly(0, 0);
    }

    @Test
    void a_follower_without_spring_is_pushed_no_further_than_it_must() {
        Link link = new Link("f>g", "f", 0.014, "g", 0.014, 1e-3, 1e-3, 3e5, Sense.CLOSES);
        Mechanism floating = new Mechanism(
                List.of(F, G),
                List.of(),
                List.of(),
                List.of(link),
                List.of(new Spring("f", 0.01, 0.02, Towards.CLOSED)));
        double[] q = rest(floating);
        assertThat(q[0]).isCloseTo(-0.5, within(1e-9));
        assertThat(q[1]).isCloseTo(-0.5, within(1e-9));
    }

    @Test
    void a_load_that_nothing_balances_is_told_by_the_key_that_carries_it() {
        Link link = new Link("f>g", "f", 0.014, "g", 0.014, 1e-3, 1e-3, 3e5, Sense.CLOSES);
        Mechanism falling = new Mechanism(
                List.of(F, G, new Mechanism.Key("h", 0)),
                List.of(new Cup("cup.h", "h", 0.03, 8000, 0)),
                List.of(),
                List.of(link),
                List.of(new Spring("h", 0.01, 0, Towards.OPEN)));
        assertThatThrownBy(() -> rest(falling, new Press("f", 1, 0.03)))
                .isInstanceOfSatisfying(
                        UnbalancedLoad.class, load -> assertThat(load.keys()).containsExactly("f", "h"));
        assertThat(rest(falling, new Press("h", 1, 0.03))[2])
                .as("a finger strong enough closes what the spring would throw open")
                .isNegative();
    }

    @Test
    void a_pad_balances_a_closing_load_whatever_the_spring() {
        Mechanism held = one(
                List.of(new Cup("cup", "f", 0.03, 8000, 0)),
                List.of(),
                List.of(new Spring("f", 0.012, 0, Towards.CLOSED)));
        assertThat(rest(held)[0]).isCloseTo(-0.012 / (8000 * 0.03 * 0.03), within(1e-12));
    }

    /** Each presses the other by what both are too thick; together they may lie anywhere, and stay where they are. */
    @Test
    void two_keys_that_only_squeeze_each_other_are_no_load() {
        Mechanism squeezed = new Mechanism(
                List.of(F, G),
                List.of(),
                List.of(),
                List.of(
                        new Link("f>g", "f", 0.01, "g", 0.01, 1e-3, 1.2e-3, 3e5, Sense.CLOSES),
                        new Link("g>f", "g", 0.01, "f", 0.01, 1e-3, 1.0e-3, 3e5, Sense.CLOSES)),
                List.of());
        Equilibrium rest = Balance.of(squeezed).atRest();
        assertThat(rest.links().force()).containsExactly(new double[] {30, 30}, within(1e-6));
        assertThat(rest.rotation()[0] + rest.rotation()[1]).isCloseTo(0, within(1e-6));
    }
}
