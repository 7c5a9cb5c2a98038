package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.HeightOffer.Left;
import hornwright.bench.sound.HeightOffer.Step;
import hornwright.engines.air.Air;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which heights would help which notes. */
public final class HeightAdvice {
    static final String BAND = "sound.note-within_cents";

    private final Keywork keywork;
    private final Air air;
    private final ShopRules rules;
    private final HornShape shape;
    private final List<NoteTuning> notes;
    private final boolean[] chosen;
    private final Map<String, FootRoom> foot;
    private final List<Fingering> fingerings;
    private final List<Cup> cups;

    private HeightAdvice(
            Keywork keywork, Air air, ShopRules rules, HornShape shape, List<NoteTuning> notes, Wish wish) {
        this.keywork = keywork;
        this.air = air;
        this.rules = rules;
        this.notes = notes;
        foot = wish.foot();
        chosen = new boolean[notes.size()];
        for (int i = 0; i < chosen.length; i++) {
            chosen[i] = wish.chosen().isEmpty()
                    || wish.chosen().contains(notes.get(i).fingering());
        }
        cups = keywork.cups().list();
        fingerings = keywork.fingerings().list();
        this.shape = shape;
    }

    /**
     * The offer for what was heard.
     *
     * @param shape the horn with its heights, as far as they were measured
     * @param notes what was heard; each fingering at most once
     */
    public static HeightOffer offer(
            Keywork keywork, Air air, ShopRules rules, HornShape shape, List<NoteTuning> notes) {
        double common = median(notes.stream().mapToDouble(NoteTuning::cents).toArray());
        return offer(keywork, air, rules, shape, notes, common, new Wish(Set.of(), Map.of()));
    }

    /**
     * What is asked of the heights.
     *
     * @param chosen fingerings that shall come nearer; none for all
     * @param foot how far the pieces at the stops let cups move, by cup; what is missing lets it move anywhere
     */
    record Wish(Set<String> chosen, Map<String, FootRoom> foot) {
        Wish {
            chosen = Set.copyOf(chosen);
            foot = Map.copyOf(foot);
        }
    }

    /** The same with what all notes share already told apart. */
    static HeightOffer offer(
            Keywork keywork,
            Air air,
            ShopRules rules,
            HornShape shape,
            List<NoteTuning> notes,
            double common,
            Wish wish) {
        return new HeightAdvice(keywork, air, rules, shape, notes, wish).offer(common);
    }

    private HeightOffer offer(double common) {
        double band = rules.value(BAND);
        HeightEffects effects = HeightEffects.of(keywork, air, shape);
        double[] cents =
                notes.stream().mapToDouble(note -> note.cents() - common).toArray();
        double[][] perMm = slopes(effects);
        double[] change = new HeightSearch(cents, perMm, room(true), room(false), band, chosen).smallest();
        if (java.util.Arrays.stream(change).anyMatch(mm -> mm != 0)) {
            perMm = chords(perMm, slopes(HeightEffects.of(keywork, air, changed(change))), change);
            change = new HeightSearch(cents, perMm, room(true), room(false), band, chosen).smallest();
        }
        ChangeEffects done = new ChangeEffects(keywork, air, shape, fingered(), cents, effects.frequencies());
        Map<Cup, Double> to = to(change);
        return new HeightOffer(common, done.of(to, band), left(done.after(to), band));
    }

    private double height(Cup cup) {
        return shape.frontMm(cup);
    }

    private int index(NoteTuning note) {
        for (int i = 0; i < fingerings.size(); i++) {
            if (fingerings.get(i).id().equals(note.fingering())) {
                return i;
            }
        }
        throw new IllegalArgumentException("this horn has no fingering " + note.fingering());
    }

    /** Cents per mm by note played and cup. */
    private double[][] slopes(HeightEffects effects) {
        return notes.stream().map(note -> effects.perMm()[index(note)]).toArray(double[][]::new);
    }

    /** A pad gains less the higher it stands: over a change counts the mean of the slopes at both its ends. */
    private static double[][] chords(double[][] here, double[][] there, double[] change) {
        double[][] chords = new double[here.length][change.length];
        for (int note = 0; note < here.length; note++) {
            for (int cup = 0; cup < change.length; cup++) {
                chords[note][cup] = change[cup] == 0 ? here[note][cup] : (here[note][cup] + there[note][cup]) / 2;
            }
        }
        return chords;
    }

    private HornShape changed(double[] change) {
        return ChangeEffects.with(shape, to(change));
    }

    private Map<Cup, Double> to(double[] change) {
        Map<Cup, Double> to = new LinkedHashMap<>();
        for (int i = 0; i < change.length; i++) {
            if (change[i] != 0) {
                to.put(cups.get(i), height(cups.get(i)) + change[i]);
            }
        }
        return to;
    }

    private List<Fingering> fingered() {
        return notes.stream().map(note -> fingerings.get(index(note))).toList();
    }

    /** How far each cup may go down or up inside the shop's band for it and as its foot lets it; a cup without a band stays. */
    private double[] room(boolean down) {
        double[] room = new double[cups.size()];
        for (int i = 0; i < room.length; i++) {
            Cup cup = cups.get(i);
            String id = "height." + keywork.voice().word() + "." + cup.hole();
            Rule end = rules.find(id + (down ? ".least_mm" : ".most_mm")).orElse(null);
            ToneHole hole = keywork.holeOf(cup);
            if (end != null && !hole.octaveVent()) {
                double reach = end.value() - height(cup);
                FootRoom stop = foot.getOrDefault(cup.id(), FootRoom.ANY);
                room[i] =
                        down ? Math.min(0, Math.max(reach, stop.downMm())) : Math.max(0, Math.min(reach, stop.upMm()));
            }
        }
        return room;
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
