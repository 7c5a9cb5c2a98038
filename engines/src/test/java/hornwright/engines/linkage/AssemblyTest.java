package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.linkage.Mechanism.Cup;
import hornwright.engines.linkage.Mechanism.Spring;
import hornwright.engines.linkage.Mechanism.Towards;
import hornwright.engines.linkage.Yield.LinkExact;
import java.util.List;
import org.junit.jupiter.api.Test;

class AssemblyTest {
    private static final Mechanism TRIO = Trio.of(0, 0, 0);

    private static Mechanism set() {
        return Thicknesses.of(TRIO, Trio.SETS).in(TRIO);
    }

    private static Yield drawn(double thickness, long seed) {
        return Assembly.yieldOf(set(), Trio.SETS, new Spread(thickness, 0, 0, 4000, seed, 5e-6));
    }

    @Test
    void without_errors_everything_closes() {
        Yield exact = drawn(0, 1);
        assertThat(exact.allClosed()).isEqualTo(1);
        assertThat(exact.worstCup()).isNull();
        assertThat(exact.gapP95()).isNegative();
    }

    @Test
    void the_same_seed_draws_the_same_and_another_seed_nearly_the_same() {
        assertThat(drawn(5e-5, 7)).isEqualTo(drawn(5e-5, 7));
        assertThat(drawn(5e-5, 8)).isNotEqualTo(drawn(5e-5, 7));
        assertThat(drawn(5e-5, 8).allClosed()).isCloseTo(drawn(5e-5, 7).allClosed(), within(0.04));
    }

    @Test
    void larger_errors_close_less_often_and_gape_wider() {
        double[] spreads = {1e-5, 3e-5, 1e-4, 3e-4};
        for (int i = 1; i < spreads.length; i++) {
            assertThat(drawn(spreads[i], 1).allClosed())
                    .isLessThanOrEqualTo(drawn(spreads[i - 1], 1).allClosed());
            assertThat(drawn(spreads[i], 1).gapP95())
                    .isGreaterThan(drawn(spreads[i - 1], 1).gapP95());
        }
        assertThat(drawn(3e-4, 1).allClosed()).isLessThan(0.5);
    }

    /** One cup, only its offset in error: it stands open where the offset exceeds what the finger can press in. */
    @Test
    void the_share_that_closes_is_the_normal_share_worked_by_hand() {
        Mechanism one = new Mechanism(
                List.of(new Mechanism.Key("k", 0)),
                List.of(new Cup("cup", "k", 0.02, 5000, 0)),
                List.of(),
                List.of(),
                List.of(new Spring("k", 0.01, 0.1, Towards.OPEN)));
        // pressed by 0.011 N m: free rest at -0.01 rad, so the cup shuts when its offset is below 0.2 mm
        List<Landing> sets = List.of(new Landing(new Press("k", 1.1, 0.01), List.of("cup")));
        Yield yield = Assembly.yieldOf(one, sets, new Spread(0, 0, 2e-4, 40_000, 3, 0));
        // one standard deviation: 0.8413 of a normal distribution lies below it; 4 σ of the draws is 0.0073
        assertThat(yield.allClosed()).isCloseTo(0.841345, within(0.0073));
        assertThat(yield.worstCup()).isEqualTo("cup");
        // 95 % at 1.644854 σ: gap = offset - 0.2 mm = 0.128971 mm
        assertThat(yield.gapP95()).isCloseTo(1.28971e-4, within(8e-6));
    }

    @Test
    void a_contact_made_exact_brings_what_it_would_bring_in_the_same_draws() {
        Spread spread = new Spread(8e-5, 0, 0, 2000, 5, 5e-6);
        Yield yield = Assembly.yieldByLink(set(), Trio.SETS, spread);
        assertThat(yield.allClosed())
                .isEqualTo(Assembly.yieldOf(set(), Trio.SETS, spread).allClosed());
        assertThat(yield.linkExact()).extracting(LinkExact::link).containsExactly("d>f-sharp", "f-sharp>bis");
        assertThat(yield.linkExact())
                .allSatisfy(one -> assertThat(one.allClosed())
                        .isGreaterThan(yield.allClosed())
                        .isLessThan(1));
    }

    @Test
    void draws_do_not_depend_on_how_they_are_shared_out() {
        Spread few = new Spread(1e-4, 2e-4, 5e-5, 300, 9, 5e-6);
        Yield all = Assembly.yieldOf(set(), Trio.SETS, few);
        double closed = 0;
        for (int draws : new int[] {299}) {
            closed = Assembly.yieldOf(set(), Trio.SETS, new Spread(1e-4, 2e-4, 5e-5, draws, 9, 5e-6))
                            .allClosed()
                    * draws;
        }
        assertThat(all.allClosed() * 300 - closed).isBetween(-1e-9, 1 + 1e-9);
    }
}
