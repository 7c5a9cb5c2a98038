package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.survey.Symptom;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Leak;
import hornwright.engines.air.AirResult;
import hornwright.engines.air.AirResult.Peak;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * Which pad a set of symptoms points to.
 *
 * <p>For every pad and a few sizes of leak the air column says how much each note's resonance loses while that pad is shut; a
 * pad that stands open for a note cannot leak in it. Pads are ranked by how well those losses explain what the player says, some
 * answers being taken as a grade off. A suspicion is where to look first, never a finding.
 */
public final class LeakSuspects {
    /** Diameters tried, mm. */
    private static final double[] SIZES = {0.3, 0.45, 0.65, 1.0};

    /** Chance that a player's word is another grade than the air's, for each grade between. */
    private static final double OFF = 0.08;

    private static final double DEPTH = 1e-3;

    private final Keywork keywork;
    private final List<Trial> trials;

    private record Trial(int cup, double sizeMm, double[] lostDb) {}

    /**
     * A pad under suspicion.
     *
     * @param cup its cup
     * @param share how much of the suspicion falls on it; all shares add up to 1
     */
    public record Suspect(String cup, double share) {}

    private LeakSuspects(Keywork keywork, List<Trial> trials) {
        this.keywork = keywork;
        this.trials = trials;
    }

    /** Reckons what each leak would do on this horn; a few seconds, worth keeping. */
    public static LeakSuspects of(Keywork keywork, Air air) {
        AirInput sound = HeightEffects.asked(HornAir.asBuilt(keywork, air), false);
        double[] before = magnitudes(AirColumn.resonances(sound));
        List<Trial> trials = new ArrayList<>();
        for (int cup = 0; cup < sound.holes().size(); cup++) {
            for (double size : SIZES) {
                trials.add(new Trial(cup, size, lost(sound, before, cup, size)));
            }
        }
        return new LeakSuspects(keywork, trials);
    }

    /** Decibels each sounding resonance loses to a leak of this diameter (mm) at a pad; none where the pad stands open. */
    static double[] lost(AirInput sound, double[] before, int cup, double diameterMm) {
        Leak leak = new Leak(sound.holes().get(cup).at(), diameterMm / 2e3, DEPTH);
        List<AirInput.Fingering> shut = sound.fingerings().stream()
                .filter(fingering -> !fingering.open().contains(cup))
                .toList();
        double[] after =
                magnitudes(AirColumn.resonances(sound.withLeaks(List.of(leak)).withFingerings(shut)));
        double[] lost = new double[before.length];
        int next = 0;
        for (int i = 0; i < lost.length; i++) {
            if (!sound.fingerings().get(i).open().contains(cup)) {
                lost[i] = 20 * Math.log10(before[i] / after[next++]);
            }
        }
        return lost;
    }

    /** Sizes of leak that were reckoned, diameters in mm, smallest first. */
    public static List<Double> sizesMm() {
        return java.util.Arrays.stream(SIZES).boxed().toList();
    }

    /** Decibels each note's resonance loses to a leak of one of {@link #sizesMm} at a cup, by fingering. */
    public Map<String, Double> lostDb(String cup, double sizeMm) {
        Trial trial = trials.stream()
                .filter(one -> keywork.cups().list().get(one.cup()).id().equals(cup) && one.sizeMm() == sizeMm)
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("no leak of %s mm was reckoned at %s".formatted(sizeMm, cup)));
        Map<String, Double> lost = new java.util.LinkedHashMap<>();
        for (int i = 0; i < trial.lostDb().length; i++) {
            lost.put(keywork.fingerings().list().get(i).id(), trial.lostDb()[i]);
        }
        return lost;
    }

    static double[] magnitudes(AirResult result) {
        return result.fingerings().stream()
                .mapToDouble(voicing -> {
                    Peak peak = voicing.sounding();
                    return peak == null ? Double.NaN : peak.magnitude();
                })
                .toArray();
    }

    /** Pads by suspicion, the first one first. */
    public List<Suspect> ranked(Map<String, Symptom> symptoms) {
        List<Cup> cups = keywork.cups().list();
        double[] logs =
                trials.stream().mapToDouble(trial -> logChance(trial, symptoms)).toArray();
        double top = java.util.Arrays.stream(logs).max().orElse(0);
        double[] byCup = new double[cups.size()];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            double weight = Math.exp(logs[i] - top);
            byCup[trials.get(i).cup()] += weight;
            sum += weight;
        }
        List<Suspect> all = new ArrayList<>();
        for (int cup = 0; cup < byCup.length; cup++) {
            all.add(new Suspect(cups.get(cup).id(), byCup[cup] / sum));
        }
        all.sort(Comparator.comparingDouble(Suspect::share).reversed());
        return all;
    }

    private double logChance(Trial trial, Map<String, Symptom> symptoms) {
        double log = 0;
        List<Fingering> fingerings = keywork.fingerings().list();
        for (int i = 0; i < fingerings.size(); i++) {
            Symptom said = symptoms.get(fingerings.get(i).id());
            if (said != null) {
                int apart = said.apart(Symptom.of(trial.lostDb()[i]));
                log += apart == 0 ? Math.log(1 - OFF) : apart * Math.log(OFF / 2);
            }
        }
        return log;
    }
}
