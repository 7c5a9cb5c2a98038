package hornwright.engines.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.action.Leg.State;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class ActionPublishedTest {
    private record Bump(double time, double speedBack, double deepest, double force) {}

    /** A free mass against a bumper, by the same steps a key takes. */
    private static Bump bump(double mass, double speed, Bumper bumper) {
        Slider free = new Slider(mass, 0, 0, 0, 1, bumper);
        double[] found = new double[4];
        KeyMotion.run(free, new State(0, 1, speed), leg -> {
            found[0] = leg.to().time();
            found[1] = -leg.to().speed();
            found[2] = Math.max(found[2], leg.to().place() - 1);
            found[3] = Math.max(
                    found[3], bumper.force(leg.to().place() - 1, leg.to().speed()));
        });
        return new Bump(found[0], found[1], found[2], found[3]);
    }

    @Test
    void damping_and_restitution_belong_together_by_the_exact_law() {
        Ref ref = Ref.read("action/contact");
        for (String d : List.of("0.1", "0.2", "0.5", "1", "2", "5", "10")) {
            ref.check("e_at_" + d, Restitution.at(Double.parseDouble(d)), 1);
        }
        for (String e : List.of("0.9", "0.8", "0.7", "0.5", "0.2", "0.1")) {
            ref.check("D_at_" + e, Restitution.dampingNumber(Double.parseDouble(e)), 1);
        }
    }

    @Test
    void a_bump_gives_back_what_the_law_says_whatever_the_exponent() {
        double expected = Ref.read("action/contact").number("e_at_1");
        for (double exponent : new double[] {1, 1.5, 2.5}) {
            Bump bump = bump(0.02, 0.4, new Bumper(1e5, exponent, 1 / 0.4));
            assertThat(bump.speedBack() / 0.4).isCloseTo(expected, within(1e-6));
            assertThat(bump.deepest())
                    .isCloseTo(new Bumper(1e5, exponent, 1 / 0.4).deepest(0.02, 0.4), within(1e-9 * bump.deepest()));
        }
    }

    @Test
    void an_elastic_bump_is_as_deep_hard_and_long_as_published() {
        Ref ref = Ref.read("action/hammer");
        Bump bump = bump(2.97e-3, 1, new Bumper(4.5e9, 2.5, 0));
        ref.check("deepest_mm", bump.deepest(), 1e-3);
        ref.check("force_N", bump.force(), 1);
        ref.check("contact_ms", bump.time(), 1e-3);
        assertThat(bump.speedBack()).isCloseTo(1, within(1e-8));
        Bump hertz = bump(0.01, 0.7, new Bumper(1e8, 1.5, 0));
        ref.check("hertz_factor", hertz.time() * 0.7 / hertz.deepest(), 1);
    }

    @Test
    void a_loss_factor_gives_back_by_spring_and_dashpot() {
        Ref ref = Ref.read("action/loss");
        for (String zeta : List.of("0.05", "0.1", "0.15", "0.3")) {
            ref.check("no_pull_" + zeta, Restitution.ofLossFactor(2 * Double.parseDouble(zeta)), 1);
        }
        double[] both = springAndDashpot(0.1);
        ref.check("no_pull_0.1", both[0], 1);
        ref.check("pull_0.1", both[1], 1);
    }

    /** x″ = −x − 2ζ x′ from x = 0 at unit speed, step by step: speed where the force ends, and where x ends. */
    private static double[] springAndDashpot(double zeta) {
        double x = 0;
        double v = 1;
        double h = 1e-7;
        double letGo = Double.NaN;
        while (x >= 0) {
            double middle = v + h / 2 * (-x - 2 * zeta * v);
            double there = x + h / 2 * v;
            v += h * (-there - 2 * zeta * middle);
            x += h * middle;
            if (Double.isNaN(letGo) && x + 2 * zeta * v < 0) {
                letGo = -v;
            }
        }
        return new double[] {letGo, -v};
    }

    @Test
    void a_bouncing_ball_follows_its_closed_form() {
        Ref ref = Ref.read("action/bounce");
        BounceTrain train = new BounceTrain(0.005, 50, 0.5);
        ref.check("first_touch_ms", train.firstTouch(), 1e-3);
        ref.check("duration_ms", train.duration(), 1e-3);
        ref.check("path_mm", train.path(), 1e-3);
        ref.check("first_rebound_mm", train.rebound(1), 1e-3);
        assertThat(train.count(1.25e-3)).isEqualTo(1);
        assertThat(train.count(1e-6)).isEqualTo(6);
    }

    @Test
    void a_key_on_a_hard_stop_falls_and_rebounds_like_the_ball() {
        Ref ref = Ref.read("action/bounce");
        double impact = Math.sqrt(2 * 50 * 0.005);
        Bumper hard = Bumper.givingBack(1e18, 1.5, 0.5, impact);
        double inertia = 2e-6;
        double arm = 0.01;
        double torque = 50 * inertia / arm;
        ActionResult key = Action.reckon(new ActionInput(inertia, torque, 0, 0.005, arm, arm, null, hard, 0));
        ref.check("first_touch_ms", Objects.requireNonNull(key.opening()), 1e-3);
        assertThat(key.impactSpeed()).isCloseTo(impact, within(1e-12));
        assertThat(key.rebounds().getFirst().height()).isCloseTo(1.25e-3, within(1e-8));
        assertThat(key.rebounds().getFirst().at()).isCloseTo(1.5e-2 * Math.sqrt(2), within(1e-7));
    }

    @Test
    void inertia_adds_by_parallel_axes() {
        Ref ref = Ref.read("action/inertia");
        ref.check("thin_kg_m2", new KeyPart.Disc(0.003, 0.012, 0, 0.025).inertia(), 1);
        ref.check("thick_kg_m2", new KeyPart.Disc(0.003, 0.012, 0.003, 0.025).inertia(), 1);
        ref.check("in_plane_kg_m2", new KeyPart.Wheel(0.003, 0.012, 0.025).inertia(), 1);
        double sum = KeyPart.inertia(List.of(new KeyPart.Point(0.002, 0.01), new KeyPart.Bar(0.004, 0.024, 0.012)));
        assertThat(sum).isCloseTo(0.002 * 1e-4 + 0.004 * 0.024 * 0.024 / 3, within(1e-18));
    }
}
