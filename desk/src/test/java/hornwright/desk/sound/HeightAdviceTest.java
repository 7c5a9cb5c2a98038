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
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class HeightAdviceTest {
    private static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);
    private static final double BAND = 4;
    private static final int HORNS = 12;
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
        assertThat(offer.changes().getFirst().spoiled()).isEmpty();
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
    void every_offer_stays_in_the_shops_bands() {
        for (long seed = 0; seed < HORNS; seed++) {
            Played horn = played(seed);
            for (Change change : horn.offer(rules).changes()) {
                String hole = keywork.cups().get(change.cup()).hole();
                assertThat(change.toFrontMm())
                        .isBetween(
                                rules.value("height.alto." + hole + ".least_mm") - 1e-9,
                                rules.value("height.alto." + hole + ".most_mm") + 1e-9);
            }
        }
    }

    @Test
    void no_line_makes_a_note_outside_its_band_worse_without_saying_so() {
        int said = 0;
        for (long seed = 0; seed < HORNS; seed++) {
            Played horn = played(seed);
            HeightOffer offer = horn.offer(rules);
            Map<String, Double> all = new HashMap<>(horn.heights());
            offer.changes().forEach(change -> all.put(change.cup(), change.toFrontMm()));
            double[] after = horn.with(all, offer.common());
            for (Change change : offer.changes()) {
                Map<String, Double> one = new HashMap<>(horn.heights());
                one.put(change.cup(), change.toFrontMm());
                said += held(horn, change, horn.with(one, offer.common()), after, offer.common());
            }
        }
        assertThat(said).as("notes some line spoils and says so").isPositive();
    }

    /** How many notes the line spoils; fails when it is silent about one of them or cries out without need. */
    private int held(Played horn, Change change, double[] alone, double[] after, double common) {
        Set<String> told = new HashSet<>();
        change.spoiled().stream().map(Effect::fingering).forEach(told::add);
        int spoiled = 0;
        for (int i = 0; i < after.length; i++) {
            double before = Math.abs(horn.notes().get(i).cents() - common);
            boolean outwards = Math.abs(alone[i]) > before;
            boolean worse = outwards && (isWorse(before, Math.abs(alone[i])) || isWorse(before, Math.abs(after[i])));
            assertThat(told.contains(horn.notes().get(i).fingering()))
                    .as("%s on the line of %s", horn.notes().get(i), change.cup())
                    .isEqualTo(worse);
            spoiled += worse ? 1 : 0;
        }
        return spoiled;
    }

    private static boolean isWorse(double before, double then) {
        return then > BAND && (before <= BAND || then > before + 0.5);
    }

    /** A horn with its cups anywhere near the factory's heights, and notes that are off by more than heights explain. */
    private record Played(Keywork keywork, Map<String, Double> heights, List<NoteTuning> notes) {
        HeightOffer offer(ShopRules rules) {
            return HeightAdvice.offer(keywork, AIR, rules, HornShape.at(heights), notes);
        }

        /** Cents of every note with the cups at other heights, the common part taken off. */
        double[] with(Map<String, Double> other, double common) {
            double[] was = HeightEffects.frequencies(keywork, AIR, HornShape.at(heights));
            double[] now = HeightEffects.frequencies(keywork, AIR, HornShape.at(other));
            double[] cents = new double[now.length];
            for (int i = 0; i < now.length; i++) {
                cents[i] = notes.get(i).cents() - common + 1200 * Math.log(now[i] / was[i]) / Math.log(2);
            }
            return cents;
        }
    }

    private Played played(long seed) {
        SplittableRandom dice = new SplittableRandom(seed);
        Map<String, Double> heights = factory();
        heights.replaceAll((cup, mm) -> Math.max(1, mm + 0.4 * dice.nextGaussian()));
        List<NoteTuning> notes = heard(heights, 0).stream()
                .map(note -> new NoteTuning(note.fingering(), note.cents() + 5 * dice.nextGaussian(), 1))
                .toList();
        return new Played(keywork, heights, notes);
    }
}
