package hornwright.desk.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.action.Action;
import hornwright.bench.action.Thickness;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.BenchOrder;
import hornwright.engines.linkage.Equilibrium;
import hornwright.engines.linkage.SetThickness;
import hornwright.engines.linkage.Thicknesses;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShippedKeyworkBalanceTest {
    private static Keywork shipped(String name) {
        return KeyworkFile.shipped(name).orElseThrow();
    }

    private static double rotation(Keywork keywork, Equilibrium at, String key) {
        return at.rotation()[keywork.keys().list().indexOf(keywork.keys().get(key))];
    }

    private static double gap(Keywork keywork, Equilibrium at, String cup) {
        return 1e3
                * at.cups().gap()[keywork.cups().list().indexOf(keywork.cups().get(cup))];
    }

    private static Equilibrium pressed(Action action, String key, double times) {
        return Balance.of(action.mechanism())
                .under(List.of(Action.press(action.keywork().keys().get(key), times)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void every_key_rests_where_its_file_says(String name) {
        Keywork keywork = shipped(name);
        Equilibrium rest = Balance.of(Action.asBuilt(keywork).mechanism()).atRest();
        for (Key key : keywork.keys()) {
            double stands = keywork.cupOf(key)
                    .map(cup -> (gap(keywork, rest, cup.id()) - cup.offsetMm()) / cup.armMm())
                    .orElseGet(() -> rotation(keywork, rest, key.id()));
            assertThat(stands).as(key.id()).isCloseTo(key.restRotationRad(), within(0.005));
        }
    }

    /**
     * A file states where the cup stands. The spring of a shut key acts at its touch, so a long key rests twisted, its
     * touch below its cup.
     */
    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void only_the_touch_of_the_long_high_keys_rests_twisted_away_from_its_cup(String name) {
        Keywork keywork = shipped(name);
        Equilibrium rest = Balance.of(Action.asBuilt(keywork).mechanism()).atRest();
        List<String> twisted = keywork.keys().stream()
                .filter(key -> Math.abs(rotation(keywork, rest, key.id()) - key.restRotationRad()) > 0.005)
                .map(Key::id)
                .toList();
        assertThat(twisted).isSubsetOf("high-e", "high-f-sharp").contains("high-e");
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void every_set_is_shut_at_twice_its_touch_force(String name) {
        Keywork keywork = shipped(name);
        for (ClosingSet set : keywork.sets()) {
            Equilibrium at = pressed(Action.asBuilt(keywork), set.press(), 2);
            for (String cup : set.closes()) {
                assertThat(gap(keywork, at, cup))
                        .as(set.press() + " closes " + cup)
                        .isNegative();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void every_hold_holds_at_its_touch_force(String name) {
        Keywork keywork = shipped(name);
        for (Hold hold : keywork.holds()) {
            String away = hold.whileReleased();
            Action action = Action.asBuilt(keywork).holdingAway(away == null ? Set.of() : Set.of(away));
            Equilibrium at = pressed(action, hold.press(), 1);
            for (String cup : hold.holds()) {
                assertThat(gap(keywork, at, cup))
                        .as(hold.press() + " holds " + cup)
                        .isNegative();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void the_octave_key_opens_the_vent_that_g_chooses_and_only_that(String name) {
        Keywork keywork = shipped(name);
        Action open = Action.asBuilt(keywork);
        Equilibrium up = pressed(open, "octave-thumb", 2);
        assertThat(gap(keywork, up, "cup.neck-octave")).isGreaterThan(0.8 * height(keywork, "cup.neck-octave"));
        assertThat(gap(keywork, up, "cup.body-octave")).isNegative();
        Equilibrium down = Balance.of(open.holdingDown(Set.of("g")).mechanism())
                .under(List.of(
                        Action.press(keywork.keys().get("octave-thumb"), 2),
                        Action.press(keywork.keys().get("g"), 2)));
        assertThat(gap(keywork, down, "cup.body-octave")).isGreaterThan(0.8 * height(keywork, "cup.body-octave"));
        assertThat(gap(keywork, down, "cup.neck-octave")).isNegative();
    }

    private static double height(Keywork keywork, String cup) {
        return keywork.cups()
                .get(cup)
                .heightCentreMm(keywork.holeOf(keywork.cups().get(cup)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void a_closing_stop_ends_the_pressing_where_the_file_says(String name) {
        Keywork keywork = shipped(name);
        for (Key key : keywork.keys().where(k -> k.closingStop() != null)) {
            Equilibrium at = pressed(Action.asBuilt(keywork), key.id(), 2);
            assertThat(rotation(keywork, at, key.id())).as(key.id()).isCloseTo(key.pressedRotationRad(), within(0.02));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor", "tarrant-loe-odd"})
    void the_contacts_as_built_are_those_that_land_together(String name) {
        Keywork keywork = shipped(name);
        Action action = Action.asBuilt(keywork);
        Thicknesses thicknesses = Thicknesses.of(action.mechanism(), action.landings(1));
        assertThat(thicknesses.conflicts()).isEmpty();
        assertThat(thicknesses.set()).hasSizeGreaterThan(7);
        for (SetThickness set : thicknesses.set()) {
            assertThat(set.change()).as(set.link()).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void the_f_sharp_contacts_are_set_before_those_of_d_e_and_f() {
        BenchOrder bench = BenchOrder.of(
                Action.asBuilt(shipped("tarrant-loe-alto")).mechanism().links());
        List<String> order = bench.links();
        assertThat(order.indexOf("link.f-sharp-to-bis")).isLessThan(order.indexOf("link.d-to-f-sharp"));
        assertThat(order.indexOf("link.f-sharp-to-g-sharp")).isLessThan(order.indexOf("link.f-to-f-sharp"));
        assertThat(order).hasSize(24).doesNotHaveDuplicates();
        assertThat(bench.circles()).isEmpty();
    }

    @Test
    void thinner_material_at_a_place_changes_the_contact_it_lies_in() {
        Keywork alto = shipped("tarrant-loe-alto");
        Link link = alto.links().get("link.d-to-f-sharp");
        String place = link.layers().getFirst().place();
        Thickness found = Thickness.ofPlaces(alto, Map.of(place, 0.5));
        assertThat(found.mm(link.id())).isCloseTo(link.thicknessMm() - 0.3, within(1e-12));
        Equilibrium at = pressed(Action.asBuilt(alto).with(found), "d", 1);
        assertThat(gap(alto, at, "cup.f-sharp")).isGreaterThan(0.2);
        assertThat(gap(alto, at, "cup.d")).isNegative();
    }
}
