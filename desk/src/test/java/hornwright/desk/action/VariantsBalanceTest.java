package hornwright.desk.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.variant.Variants;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Equilibrium;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Derived horns on their springs: each switch by itself, all at once, and a few drawn by lot. */
class VariantsBalanceTest {
    private static final int SWITCHES = 9;
    private static final List<BellKeySide> SIDES = List.of(BellKeySide.values());

    private static List<Keywork> variants(String name) {
        Keywork base = KeyworkFile.shipped(name).orElseThrow();
        List<Keywork> all = new ArrayList<>();
        Random random = new Random(7);
        for (int i = 0; i < SWITCHES + 8; i++) {
            int bits = i < SWITCHES ? 1 << i : i == SWITCHES ? -1 : random.nextInt(1 << SWITCHES);
            all.add(Variants.of(base, changed(base.switches(), bits, SIDES.get(i % SIDES.size()))));
        }
        return all;
    }

    private static Switches changed(Switches has, int bits, BellKeySide side) {
        return new Switches(
                on(bits, 0) ? false : has.sideFSharp(),
                has.highFSharp() != on(bits, 1),
                on(bits, 2) ? false : has.frontF(),
                on(bits, 3),
                side,
                on(bits, 4) ? Pieces.ONE_PIECE : Pieces.TWO_PIECE,
                on(bits, 5) ? Articulation.PLAIN : Articulation.ARTICULATED,
                on(bits, 6) ? Articulation.PLAIN : Articulation.ARTICULATED,
                on(bits, 7) ? OctaveLevers.TWO : OctaveLevers.ONE,
                on(bits, 8) ? Pieces.ONE_PIECE : Pieces.TWO_PIECE);
    }

    private static boolean on(int bits, int which) {
        return (bits >> which & 1) == 1;
    }

    private static double gapMm(Keywork horn, Equilibrium at, Cup cup) {
        return 1e3 * at.cups().gap()[horn.cups().list().indexOf(cup)];
    }

    private static Equilibrium pressed(Action action, String key, double times) {
        return Balance.of(action.mechanism())
                .under(List.of(Action.press(action.keywork().keys().get(key), times)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor"})
    void every_cup_of_a_variant_rests_where_it_should(String name) {
        for (Keywork horn : variants(name)) {
            Equilibrium rest = Balance.of(Action.asBuilt(horn).mechanism()).atRest();
            for (Cup cup : horn.cups()) {
                Key key = horn.keyOf(cup);
                assertThat(gapMm(horn, rest, cup) / cup.armMm())
                        .as(horn.switches() + " " + cup.id())
                        .isCloseTo(key.restRotationRad(), within(0.005));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor"})
    void the_sets_and_holds_of_a_variant_do_what_they_say(String name) {
        for (Keywork horn : variants(name)) {
            for (ClosingSet set : horn.sets()) {
                Equilibrium at = pressed(Action.asBuilt(horn), set.press(), 2);
                shut(horn, at, set.closes(), horn.switches() + " set " + set.press());
            }
            for (Hold hold : horn.holds()) {
                String away = hold.whileReleased();
                Action action = Action.asBuilt(horn).holdingAway(away == null ? Set.of() : Set.of(away));
                shut(horn, pressed(action, hold.press(), 1), hold.holds(), horn.switches() + " hold " + hold.press());
            }
        }
    }

    private static void shut(Keywork horn, Equilibrium at, List<String> cups, String as) {
        for (String cup : cups) {
            assertThat(gapMm(horn, at, horn.cups().get(cup))).as(as + " " + cup).isNegative();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor"})
    void each_of_two_octave_levers_opens_its_own_vent_only(String name) {
        Keywork base = KeyworkFile.shipped(name).orElseThrow();
        Keywork horn = Variants.of(
                base, changed(base.switches(), 1 << 7, base.switches().bellKeys()));
        for (OctaveState state : horn.octaveStates()) {
            for (String lever : state.pressed()) {
                Equilibrium at = pressed(Action.asBuilt(horn), lever, 2);
                for (String vent : List.of("neck-octave", "body-octave")) {
                    Cup cup = horn.cups().get("cup." + vent);
                    double gap = gapMm(horn, at, cup);
                    if (vent.equals(state.openVent())) {
                        assertThat(gap).isGreaterThan(0.8 * cup.heightCentreMm(horn.holeOf(cup)));
                    } else {
                        assertThat(gap).isNegative();
                    }
                }
            }
        }
    }
}
