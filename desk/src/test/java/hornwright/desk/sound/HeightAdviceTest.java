package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.HeightAdvice;
import hornwright.bench.sound.HeightEffects;
import hornwright.bench.sound.HeightOffer;
import hornwright.bench.sound.HeightOffer.Change;
import hornwright.bench.sound.HeightOffer.Effect;
import hornwright.bench.sound.HeightOffer.Step;
import hornwright.bench.sound.HornShape;
import hornwright.bench.sound.NoteTuning;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HeightAdviceTest {
    private static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);
    private static final double BAND = 4;
    private final Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final ShopRules rules = ShopRules.shipped().with("sound.note-within_cents", BAND);

    private Map<String, Double> factory() {
        Map<String, Double> heights = new HashMap<>();
        keywork.cups().forEach(cup -> heights.put(cup.id(), cup.heightFrontMm()));
        return heights;
    }

    /** What a tuner shows for a horn at these heights, were the factory's own in tune. */
    private List<NoteTuning> heard(Map<String, Double> heights, double common) {
        double[] right = HeightEffects.of(keywork, AIR, HornShape.at(factory())).frequencies();
        double[] now = HeightEffects.of(keywork, AIR, HornShape.at(heights)).frequencies();
        List<NoteTuning> notes = new ArrayList<>();
        for (int i = 0; i < right.length; i++) {
            double cents = 1200 * Math.log(now[i] / right[i]) / Math.log(2);
            notes.add(new NoteTuning(keywork.fingerings().list().get(i).id(), cents + common, 1));
        }
        return notes;
    }

    @Test
    void a_cup_that_stands_too_low_is_offered_back_up_and_nothing_else() {
        Map<String, Double> heights = factory();
        heights.merge("cup.g-sharp", -2.2, Double::sum);
        HeightOffer offer = HeightAdvice.offer(keywork, AIR, rules, HornShape.at(heights), heard(heights, 7));
        assertThat(offer.common()).isCloseTo(7, within(1.0));
        assertThat(offer.changes()).extracting(Change::cup).containsExactly("cup.g-sharp");
        assertThat(offer.changes().getFirst().toFrontMm())
                .isGreaterThan(offer.changes().getFirst().fromFrontMm());
        assertThat(offer.changes().getFirst().pushedOut()).isEmpty();
        assertThat(offer.left()).isEmpty();
    }

    @Test
    void a_horn_in_tune_is_offered_nothing() {
        HeightOffer offer = HeightAdvice.offer(keywork, AIR, rules, HornShape.at(factory()), heard(factory(), -12));
        assertThat(offer.common()).isCloseTo(-12, within(1e-6));
        assertThat(offer.changes()).isEmpty();
        assertThat(offer.left()).isEmpty();
    }

    @Test
    void a_note_with_every_hole_shut_is_sent_up_the_ladder_and_no_height_is_moved_for_it() {
        List<NoteTuning> notes = new ArrayList<>(heard(factory(), 0));
        notes.set(0, new NoteTuning("note.b-flat-3", -25, 1));
        HeightOffer offer = HeightAdvice.offer(keywork, AIR, rules, HornShape.at(factory()), notes);
        assertThat(offer.changes()).isEmpty();
        assertThat(offer.left()).singleElement().satisfies(left -> {
            assertThat(left.fingering()).isEqualTo("note.b-flat-3");
            assertThat(left.ladder()).containsExactly(Step.MOUTHPIECE, Step.NECK, Step.LEAK);
        });
    }

    @Test
    void the_height_of_low_c_moves_both_registers_of_d_the_same_way() {
        HeightEffects effects = HeightEffects.of(keywork, AIR, HornShape.at(factory()));
        List<String> cups = keywork.cups().stream().map(Cup::id).toList();
        int lowC = cups.indexOf("cup.low-c");
        assertThat(effects.perMm()[index("note.d-4")][lowC]).isGreaterThan(0.5);
        assertThat(effects.perMm()[index("note.d-5")][lowC]).isGreaterThan(0.5);
        for (double none : effects.perMm()[index("note.b-flat-3")]) {
            assertThat(none).isZero();
        }
    }

    private int index(String fingering) {
        return keywork.fingerings().stream().map(f -> f.id()).toList().indexOf(fingering);
    }

    @Test
    void every_offer_stays_in_the_shops_bands_and_says_on_its_line_what_it_spoils() {
        for (long seed = 0; seed < 6; seed++) {
            Random dice = new Random(seed);
            List<NoteTuning> notes = heard(factory(), 0).stream()
                    .map(note -> new NoteTuning(note.fingering(), 5 * dice.nextGaussian(), 1))
                    .toList();
            HeightOffer offer = HeightAdvice.offer(keywork, AIR, rules, HornShape.at(factory()), notes);
            Set<String> told = new HashSet<>();
            for (Change change : offer.changes()) {
                String hole = keywork.cups().get(change.cup()).hole();
                assertThat(change.toFrontMm())
                        .isBetween(
                                rules.value("height.alto." + hole + ".least_mm") - 1e-9,
                                rules.value("height.alto." + hole + ".most_mm") + 1e-9);
                change.pushedOut().stream().map(Effect::fingering).forEach(told::add);
            }
            Map<String, Double> before = new HashMap<>();
            notes.forEach(note -> before.put(note.fingering(), note.cents() - offer.common()));
            offer.left().stream()
                    .filter(left -> Math.abs(before.getOrDefault(left.fingering(), 0.0)) <= BAND)
                    .forEach(left -> assertThat(told).contains(left.fingering()));
        }
    }
}
