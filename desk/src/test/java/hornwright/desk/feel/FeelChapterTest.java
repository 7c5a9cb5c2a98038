package hornwright.desk.feel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.action.Action;
import hornwright.bench.feel.SpringChange;
import hornwright.bench.feel.TouchForces;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.plan.feel.FeelAnswer.Balance;
import hornwright.bench.plan.feel.FeelAnswer.Evened;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.feel.FeelAnswer.Hand;
import hornwright.bench.plan.feel.FeelAnswer.Moved;
import hornwright.bench.plan.feel.FeelAnswer.Try;
import hornwright.bench.plan.feel.FeelAnswer.Weight;
import hornwright.bench.plan.feel.FeelAnswer.Wire;
import hornwright.bench.plan.feel.FeelChapter;
import hornwright.bench.plan.feel.FeelQuestion;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Unit;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class FeelChapterTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final FeelAnswer UNWEIGHED = answer(List.of());

    private static FeelAnswer answer(List<Reading> weights) {
        return FeelChapter.of(new FeelQuestion(ALTO, weights, Stock.empty(), ShopRules.shipped()));
    }

    private static Reading weighed(String key, double newtons) {
        return Reading.of("r." + key, ReadingKind.TOUCH_WEIGHT, key, new Observed.Amount(newtons, Unit.NEWTON, null));
    }

    private static double engine(Action action, String key) {
        return TouchForces.of(action, key).orElseThrow().newtons();
    }

    @Test
    void every_touch_of_the_keywork_is_felt_once_with_its_doubt_and_its_grounds() {
        List<Finger> fingers = UNWEIGHED.hands().stream()
                .flatMap(hand -> hand.fingers().stream())
                .toList();
        assertThat(fingers)
                .extracting(Finger::key)
                .doesNotHaveDuplicates()
                .hasSize(TouchForces.of(Action.asBuilt(ALTO)).size());
        assertThat(fingers).allSatisfy(finger -> {
            assertThat(finger.force().value())
                    .as(finger.key())
                    .isCloseTo(engine(Action.asBuilt(ALTO), finger.key()), within(1e-12));
            assertThat(finger.force().u()).as(finger.key()).isBetween(0.02, 0.2);
            assertThat(UNWEIGHED.becauses().leaves(finger.force().because())).isNotEmpty();
        });
    }

    @Test
    void a_touch_that_was_weighed_shows_the_reading_and_the_action_asks_for_it() {
        FeelAnswer weighed = answer(List.of(weighed("e", 1.05), weighed("d", 0.70)));
        Finger e = weighed.finger("e").orElseThrow();
        assertThat(e.read()).isTrue();
        assertThat(e.force().value()).isEqualTo(1.05);
        assertThat(e.force().u()).isEqualTo(0.08);
        Hand lower = weighed.hands().stream()
                .filter(hand -> hand.title().equals("Lower stack"))
                .findFirst()
                .orElseThrow();
        assertThat(lower.band().of(e.force())).isEqualTo(Weight.HEAVY);
        Evened evening = Objects.requireNonNull(lower.evening());
        assertThat(evening.changes()).isNotEmpty();
        assertThat(evening.changes().getFirst().key()).isEqualTo("e");
        assertThat(evening.changes().getFirst().share().value()).isNegative();
        assertThat(evening.worstAfter().value())
                .isLessThan(evening.worst().value())
                .isLessThan(evening.aim().value() + 0.02);
        Moved after = evening.after().stream()
                .filter(moved -> moved.key().equals("e"))
                .findFirst()
                .orElseThrow();
        assertThat(after.force().value()).isCloseTo(1.05 + after.change().value(), within(1e-12));
    }

    @Test
    void every_stated_change_is_the_engine_run_again() {
        Action built = Action.asBuilt(ALTO);
        for (Hand hand : UNWEIGHED.hands()) {
            for (Finger finger : hand.fingers()) {
                for (Wire wire : finger.wires()) {
                    double torque = ALTO.keys().get(finger.key()).spring().torqueNmm();
                    double becomes = ratio(wire) * torque;
                    Action other = new SpringChange(finger.key(), torque, becomes).in(built);
                    assertThat(wire.change().value())
                            .as(finger.key() + " " + wire.sizeWord())
                            .isCloseTo(engine(other, finger.key()) - engine(built, finger.key()), within(1e-9));
                }
            }
        }
    }

    /** What the because of the change says the other wire pulls. */
    private static double ratio(Wire wire) {
        return UNWEIGHED
                .becauses()
                .get(wire.change().because())
                .inputs()
                .getLast()
                .value();
    }

    @Test
    void a_thicker_wire_is_heavier_and_a_thinner_one_lighter() {
        assertThat(UNWEIGHED.hands())
                .flatExtracting(Hand::fingers)
                .filteredOn(finger -> finger.wires().size() == 2)
                .hasSizeGreaterThan(15)
                .allSatisfy(finger -> {
                    assertThat(finger.wires().getFirst().change().value()).isNegative();
                    assertThat(finger.wires().getLast().change().value()).isPositive();
                });
    }

    /** Common practice: the lever must beat the cup, and whoever works the lever pays for it. */
    @Test
    void a_stronger_g_sharp_lever_holds_its_pad_harder_and_makes_b_and_b_flat_heavier() {
        Balance balance = UNWEIGHED.balances().getFirst();
        assertThat(balance.cup()).isEqualTo("g-sharp");
        assertThat(balance.times().value()).isGreaterThan(1);
        Try thicker = tried(balance, "G♯ lever spring 1.22 mm");
        assertThat(Objects.requireNonNull(thicker.held()).value())
                .isGreaterThan(balance.held().value());
        assertThat(thicker.touches()).extracting(Moved::key).contains("table-b", "table-b-flat", "table-c-sharp");
        assertThat(thicker.touches())
                .allSatisfy(moved -> assertThat(moved.change().value()).isPositive());
        Try thinner = tried(balance, "G♯ lever spring 1.07 mm");
        assertThat(Objects.requireNonNull(thinner.held()).value())
                .isLessThan(balance.held().value());
        assertThat(thinner.touches())
                .allSatisfy(moved -> assertThat(moved.change().value()).isNegative());
    }

    private static Try tried(Balance balance, String what) {
        return balance.tries().stream()
                .filter(one -> one.what().equals(what))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void beside_a_band_a_touch_is_only_perhaps_heavy_while_its_doubt_reaches_back() {
        Hand upper = UNWEIGHED.hands().getFirst();
        Finger g = UNWEIGHED.finger("g").orElseThrow();
        assertThat(upper.band().of(g.force())).isEqualTo(Weight.PERHAPS_HEAVY);
        Finger weighed = answer(List.of(weighed("g", 0.9))).finger("g").orElseThrow();
        assertThat(upper.band().of(weighed.force())).isEqualTo(Weight.HEAVY);
    }
}
