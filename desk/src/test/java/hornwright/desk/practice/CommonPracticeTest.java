package hornwright.desk.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.action.Action;
import hornwright.bench.bounce.CountedBounces;
import hornwright.bench.bounce.KeyBounce;
import hornwright.bench.bounce.OpeningKey;
import hornwright.bench.feel.SpringChange;
import hornwright.bench.feel.TouchForces;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rest;
import hornwright.bench.material.Fit;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.material.Sheet;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.settling.KeySettling;
import hornwright.bench.settling.Recheck;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.seat.PadStiffness;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Seat;
import hornwright.engines.seat.SeatInput;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each direction is common practice; the sizes are this program's. */
class CommonPracticeTest {
    private static final Materials TYPICAL = Materials.of(ShopRules.shipped());
    private static final LocalDate LAID = LocalDate.of(2026, 3, 2);

    private final Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    private OpeningKey opening(String key) {
        return OpeningKey.of(alto, alto.keys().get(key), TYPICAL).orElseThrow();
    }

    private static double rebound(OpeningKey key) {
        return KeyBounce.of(key, TYPICAL).orElseThrow().rebound().value();
    }

    @ParameterizedTest
    @ValueSource(strings = {"f", "e", "a", "g", "b"})
    void a_heavier_resonator_bounces_more(String name) {
        OpeningKey key = opening(name);
        OpeningKey light = key.withCentre(0.2, 20, 0.4);
        OpeningKey heavy = key.withCentre(6, 30, 1);
        assertThat(rebound(heavy)).isGreaterThan(rebound(light));
        assertThat(KeyBounce.of(heavy, TYPICAL).orElseThrow().opening().value())
                .isGreaterThan(
                        KeyBounce.of(light, TYPICAL).orElseThrow().opening().value());
    }

    @ParameterizedTest
    @ValueSource(strings = {"f", "a", "g", "b"})
    void a_cork_foot_bounces_more_than_a_felt_one(String name) {
        OpeningKey key = opening(name);
        double thickness = key.cushion().thicknessMm();
        assertThat(rebound(key.on(List.of(new Sheet("natural cork", thickness)))))
                .isGreaterThan(rebound(key.on(List.of(new Sheet("woven wool felt", thickness)))));
    }

    @Test
    void every_key_a_spring_opens_has_an_answer_with_its_doubt_and_its_grounds() {
        int answered = 0;
        for (var key : alto.keys()) {
            var opening = OpeningKey.of(alto, key, TYPICAL);
            if (opening.isPresent()) {
                KeyBounce bounce = KeyBounce.of(opening.get(), TYPICAL).orElseThrow();
                assertThat(bounce.opening().value()).as(key.id()).isBetween(3.0, 80.0);
                assertThat(bounce.opening().u()).as(key.id()).isPositive();
                assertThat(bounce.settled().value())
                        .isGreaterThan(bounce.opening().value());
                assertThat(bounce.stands()).isNotEmpty().allMatch(line -> line.contains("typical, check yours"));
                answered++;
            }
        }
        assertThat(answered)
                .isEqualTo(alto.cups().where(cup -> cup.rest() == Rest.OPEN).size());
    }

    @Test
    void from_typical_figures_alone_no_key_is_called_a_bouncer() {
        assertThat(KeyBounce.of(opening("f"), TYPICAL).orElseThrow().verdict())
                .isEqualTo(KeyBounce.Verdict.CANNOT_BE_SAID);
        Materials lively = measured(0.75);
        assertThat(KeyBounce.of(opening("a"), lively).orElseThrow().verdict()).isEqualTo(KeyBounce.Verdict.BOUNCES);
        Materials dead = measured(0.04);
        assertThat(KeyBounce.of(opening("a"), dead).orElseThrow().verdict()).isEqualTo(KeyBounce.Verdict.QUIET);
    }

    private static Materials measured(double restitution) {
        return TYPICAL.with(new Fit("natural cork", Property.RESTITUTION, restitution, 0.01, "bounces counted"));
    }

    @Test
    void counting_bounces_gives_back_what_the_material_gives_back() {
        OpeningKey key = opening("a").on(List.of(new Sheet("woven wool felt", 2)));
        Materials truth = TYPICAL.with(new Fit("woven wool felt", Property.RESTITUTION, 0.62, 1e-6, "the truth"));
        KeyBounce real = KeyBounce.of(key, truth).orElseThrow();
        assertThat(real.rebound().value()).isGreaterThan(0.2);
        List<Integer> counts = List.of(seen(key, truth), seen(key, truth), seen(key, truth));
        Fit fit = new CountedBounces(key, counts).restitution(TYPICAL).had().orElseThrow();
        assertThat(fit.value()).isCloseTo(0.62, within(4 * fit.u()));
        assertThat(fit.u()).isLessThan(0.12);
        assertThat(TYPICAL.with(fit)
                        .cell("woven wool felt", Property.RESTITUTION)
                        .because())
                .contains("let go 3 times");
    }

    /** The count that gives the true figure back best, as an eye would have counted it. */
    private static int seen(OpeningKey key, Materials truth) {
        for (int count = 0; count < 30; count++) {
            Fit fit = new CountedBounces(key, List.of(count))
                    .restitution(TYPICAL)
                    .had()
                    .orElseThrow();
            double half = fit.u() * Math.sqrt(3);
            double wanted = truth.value("woven wool felt", Property.RESTITUTION);
            if (wanted >= fit.value() - half && wanted < fit.value() + half) {
                return count;
            }
        }
        throw new AssertionError("no count fits");
    }

    @Test
    void bounces_on_two_materials_at_once_name_neither() {
        OpeningKey mixed = opening("f");
        assertThat(mixed.cushion().sheets()).hasSize(2);
        assertThat(new CountedBounces(mixed, List.of(2)).restitution(TYPICAL).had())
                .isEmpty();
    }

    @Test
    void a_foot_of_soft_felt_lifts_its_cup_more_than_one_of_cork() {
        var key = alto.keys().get("a");
        String place = key.stop().layers().getFirst().place();
        double felt = rise(key.id(), place, "woven wool felt");
        double cork = rise(key.id(), place, "natural cork");
        assertThat(felt).isGreaterThan(1.5 * cork);
        assertThat(cork).isPositive();
    }

    private double rise(String key, String place, String material) {
        var laid = new hornwright.bench.settling.Laid(place, material, 2, true);
        KeySettling settling = new KeySettling(alto, Map.of(place, laid), Set.of(place), TYPICAL);
        Recheck recheck = settling.height(alto.keys().get(key), LAID).orElseThrow();
        return recheck.inTheEndMm();
    }

    @Test
    void fresh_link_corks_gain_lost_motion_and_old_ones_do_not() {
        var link = alto.links().list().getFirst();
        Set<String> places = Set.of(link.layers().getFirst().place());
        assertThat(new KeySettling(alto, Map.of(), places, TYPICAL)
                        .lostMotion(link, LAID)
                        .byThenMm())
                .isPositive();
        assertThat(new KeySettling(alto, Map.of(), Set.of(), TYPICAL)
                        .lostMotion(link, LAID)
                        .byThenMm())
                .isZero();
    }

    private SeatResult seat(String cupId, double stiffness, double errorMm, Profile rim) {
        Cup cup = alto.cups().get(cupId);
        double radius = alto.holeOf(cup).radiusMm() / 1e3;
        Hinged mount = new Hinged(cup.armMm() / 1e3, errorMm / 1e3, 0, 0, 0.002);
        return Seat.reckon(new SeatInput(radius, rim, Profile.FLAT, PadStiffness.even(stiffness), mount, 1.2e-3, 1000));
    }

    @Test
    void a_soft_pad_forgives_a_rim() {
        Profile warped = new Harmonics(List.of(new Harmonic(2, 40e-6, 0)));
        SeatResult soft = seat("cup.e", 0.1e6, 0, warped);
        SeatResult hard = seat("cup.e", 0.4e6, 0, warped);
        assertThat(soft.leak()).isLessThan(hard.leak());
        assertThat(soft.sealing()).isLessThan(hard.sealing());
    }

    @Test
    void a_proud_pad_touches_at_the_back_first() {
        assertThat(seat("cup.e", 0.2e6, 0.2, Profile.FLAT).firstTouch()).isCloseTo(Math.PI, within(1e-6));
        assertThat(seat("cup.e", 0.2e6, -0.2, Profile.FLAT).firstTouch()).isZero();
    }

    @Test
    void a_stronger_g_sharp_spring_makes_the_low_table_heavier() {
        Action before = Action.asBuilt(alto);
        double torque = alto.keys().get("g-sharp-lever").spring().torqueNmm();
        Action stronger = new SpringChange("g-sharp-lever", torque, 1.3 * torque).in(before);
        for (String touch : List.of("table-c-sharp", "table-b", "table-b-flat")) {
            assertThat(TouchForces.of(stronger, touch).orElseThrow().newtons())
                    .as(touch)
                    .isGreaterThan(TouchForces.of(before, touch).orElseThrow().newtons());
        }
    }
}
