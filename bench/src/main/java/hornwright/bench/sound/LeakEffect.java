package hornwright.bench.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Leak;
import hornwright.engines.air.AirModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which notes a leak at one spot of the tube hurts most: decibels their resonance loses. */
public final class LeakEffect {
    private static final double DEPTH = 1e-3;

    /** Mean of the air in a horn that is played, common practice. */
    private static final double PLAYING_C = 26.85;

    private LeakEffect() {}

    /** The same in words, "low C♯, D"; empty when no note loses anything to speak of. */
    public static String inWords(Keywork keywork, double atMm, double diameterMm, int most) {
        return String.join(
                ", ",
                worst(keywork, atMm, diameterMm, most).stream()
                        .map(hurt -> named(hurt.fingering()))
                        .toList());
    }

    private static String named(Fingering fingering) {
        return fingering.written().replaceFirst("b(?=\\d)", "♭").replace('#', '♯');
    }

    /**
     * A note that loses by it.
     *
     * @param lostDb of the sounding resonance
     */
    public record Hurt(Fingering fingering, double lostDb) {}

    /**
     * The notes that lose most, the worst first; those that lose less than a tenth of a decibel are left out.
     *
     * @param atMm from the small end of the neck
     * @param diameterMm of a round hole that leaks as much
     */
    public static List<Hurt> worst(Keywork keywork, double atMm, double diameterMm, int most) {
        List<Fingering> standard = keywork.fingerings().where(Fingering::standard);
        AirInput all = HeightEffects.asked(HornAir.asBuilt(keywork, AirModel.CHAIGNE_KERGOMARD.at(PLAYING_C)), false);
        List<AirInput.Fingering> asked = standard.stream()
                .map(one -> all.fingerings().get(keywork.fingerings().list().indexOf(one)))
                .toList();
        AirInput sound = all.withFingerings(asked);
        double[] before = LeakSuspects.magnitudes(AirColumn.reckon(sound));
        Leak leak = new Leak(atMm / 1e3, diameterMm / 2e3, DEPTH);
        double[] after = LeakSuspects.magnitudes(AirColumn.reckon(sound.withLeaks(List.of(leak))));
        List<Hurt> hurts = new ArrayList<>();
        for (int i = 0; i < before.length; i++) {
            double lost = 20 * Math.log10(before[i] / after[i]);
            if (lost > 0.1) {
                hurts.add(new Hurt(standard.get(i), lost));
            }
        }
        hurts.sort(Comparator.comparingDouble(Hurt::lostDb).reversed());
        return List.copyOf(hurts.subList(0, Math.min(most, hurts.size())));
    }
}
