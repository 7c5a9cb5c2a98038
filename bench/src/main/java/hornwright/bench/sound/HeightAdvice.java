package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.HeightOffer.Change;
import hornwright.bench.sound.HeightOffer.Effect;
import hornwright.bench.sound.HeightOffer.Left;
import hornwright.bench.sound.HeightOffer.Step;
import hornwright.engines.air.Air;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which heights would help which notes. */
public final class HeightAdvice {
    private static final String BAND = "sound.note-within_cents";
    private static final double TOLD = 0.5;

    private final Keywork keywork;
    private final Air air;
    private final ShopRules rules;
    private final Map<String, Double> frontMm;
    private final List<NoteTuning> notes;
    private final List<Fingering> fingerings;
    private final List<Cup> cups;

    private HeightAdvice(
            Keywork keywork, Air air, ShopRules rules, Map<String, Double> frontMm, List<NoteTuning> notes) {
        this.keywork = keywork;
        this.air = air;
        this.rules = rules;
        this.notes = notes;
        cups = keywork.cups().list();
        fingerings = keywork.fingerings().list();
        this.frontMm = new HashMap<>();
        cups.forEach(cup -> this.frontMm.put(cup.id(), frontMm.getOrDefault(cup.id(), cup.heightFrontMm())));
    }

    /**
     * The offer for what was heard.
     *
     * @param frontMm measured heights at the front edge by cup id; the factory's where none was measured
     * @param notes what was heard; each fingering at most once
     */
    public static HeightOffer offer(
            Keywork keywork, Air air, ShopRules rules, Map<String, Double> frontMm, List<NoteTuning> notes) {
        return new HeightAdvice(keywork, air, rules, frontMm, notes).offer();
    }

    private HeightOffer offer() {
        double band = rules.value(BAND);
        HeightEffects effects = HeightEffects.of(keywork, air, frontMm);
        double common = median(notes.stream().mapToDouble(NoteTuning::cents).toArray());
        double[] cents =
                notes.stream().mapToDouble(note -> note.cents() - common).toArray();
        double[][] perMm = new double[notes.size()][];
        for (int i = 0; i < perMm.length; i++) {
            perMm[i] = effects.perMm()[index(notes.get(i))];
        }
        double[] change = new HeightSearch(cents, perMm, room(true), room(false), band).smallest();
        double[] after = after(cents, change, effects);
        return new HeightOffer(common, changes(cents, after, perMm, change, band), left(after, band));
    }

    private double height(Cup cup) {
        return frontMm.getOrDefault(cup.id(), cup.heightFrontMm());
    }

    private int index(NoteTuning note) {
        for (int i = 0; i < fingerings.size(); i++) {
            if (fingerings.get(i).id().equals(note.fingering())) {
                return i;
            }
        }
        throw new IllegalArgumentException("this horn has no fingering " + note.fingering());
    }

    /** How far each cup may go down or up inside the shop's band for it; a cup without a band stays. */
    private double[] room(boolean down) {
        double[] room = new double[cups.size()];
        for (int i = 0; i < room.length; i++) {
            Cup cup = cups.get(i);
            String id = "height." + keywork.voice().word() + "." + cup.hole();
            Rule end = rules.find(id + (down ? ".least_mm" : ".most_mm")).orElse(null);
            ToneHole hole = keywork.holeOf(cup);
            if (end != null && !hole.octaveVent()) {
                double reach = end.value() - height(cup);
                room[i] = down ? Math.min(0, reach) : Math.max(0, reach);
            }
        }
        return room;
    }

    /** Cents with the changes made, by the air column itself rather than by straight lines. */
    private double[] after(double[] cents, double[] change, HeightEffects before) {
        Map<String, Double> changed = new HashMap<>(frontMm);
        for (int i = 0; i < change.length; i++) {
            changed.merge(cups.get(i).id(), change[i], Double::sum);
        }
        double[] now = HeightEffects.frequencies(keywork, air, changed);
        double[] after = new double[cents.length];
        for (int i = 0; i < after.length; i++) {
            int fingering = index(notes.get(i));
            after[i] = cents[i] + HeightEffects.cents(before.frequencies()[fingering], now[fingering]);
        }
        return after;
    }

    private List<Change> changes(double[] cents, double[] after, double[][] perMm, double[] change, double band) {
        List<Change> all = new ArrayList<>();
        for (int cup = 0; cup < change.length; cup++) {
            if (change[cup] != 0) {
                List<Effect> effects = new ArrayList<>();
                for (int i = 0; i < cents.length; i++) {
                    double moved = Math.abs(perMm[i][cup] * change[cup]);
                    boolean out = Math.abs(cents[i]) <= band && Math.abs(after[i]) > band;
                    if (moved >= TOLD || (out && moved > 0)) {
                        effects.add(new Effect(notes.get(i).fingering(), perMm[i][cup], cents[i], after[i], out));
                    }
                }
                double from = height(cups.get(cup));
                all.add(new Change(cups.get(cup).id(), from, from + change[cup], effects));
            }
        }
        return all;
    }

    private List<Left> left(double[] after, double band) {
        List<Left> left = new ArrayList<>();
        for (int i = 0; i < after.length; i++) {
            if (Math.abs(after[i]) > band) {
                Fingering fingering = fingerings.get(index(notes.get(i)));
                List<Step> ladder = fingering.register() > 1
                        ? List.of(Step.MOUTHPIECE, Step.NECK, Step.VENT, Step.LEAK)
                        : List.of(Step.MOUTHPIECE, Step.NECK, Step.LEAK);
                left.add(new Left(fingering.id(), after[i], ladder));
            }
        }
        return left;
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        java.util.Arrays.sort(sorted);
        int n = sorted.length;
        return n == 0 ? 0 : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }
}
