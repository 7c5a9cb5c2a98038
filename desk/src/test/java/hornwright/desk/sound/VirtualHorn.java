package hornwright.desk.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.HornAir;
import hornwright.bench.sound.HornShape;
import hornwright.bench.survey.Symptom;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Leak;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;

/**
 * A horn that is not quite its pattern, with one leak.
 *
 * @param cup whose pad leaks
 * @param symptoms what its player says, by fingering
 */
record VirtualHorn(String cup, double leakMm, Map<String, Symptom> symptoms) {
    private static final double HEIGHT_SPREAD_MM = 0.2;
    private static final double MISJUDGED = 0.1;

    /** Heights off by 0.2 mm, a leak of 0.3 to 1 mm at any pad, one word in ten a grade off. */
    static VirtualHorn leaking(Keywork keywork, Air air, double[] usual, Random dice) {
        Map<String, Double> heights = new HashMap<>();
        for (Cup cup : keywork.cups()) {
            heights.put(cup.id(), Math.max(0.5, cup.heightFrontMm() + HEIGHT_SPREAD_MM * dice.nextGaussian()));
        }
        int leaky = dice.nextInt(keywork.cups().list().size());
        double diameter = 0.3 + 0.7 * dice.nextDouble();
        AirInput sound = brief(HornAir.of(keywork, air, HornShape.at(heights)));
        double at = sound.holes().get(leaky).at();
        double[] whole = magnitudes(sound);
        double[] leaking = magnitudes(sound.withLeaks(List.of(new Leak(at, diameter / 2e3, 0.8e-3))));
        Map<String, Symptom> symptoms = new LinkedHashMap<>();
        for (int i = 0; i < usual.length; i++) {
            boolean shut = !sound.fingerings().get(i).open().contains(leaky);
            Symptom true_ = Symptom.of(20 * Math.log10(usual[i] / (shut ? leaking[i] : whole[i])));
            symptoms.put(keywork.fingerings().list().get(i).id(), said(true_, dice));
        }
        return new VirtualHorn(keywork.cups().list().get(leaky).id(), diameter, symptoms);
    }

    private static Symptom said(Symptom grade, Random dice) {
        if (dice.nextDouble() >= MISJUDGED) {
            return grade;
        }
        return switch (grade) {
            case SPEAKS, FAILS -> Symptom.STUFFY;
            case STUFFY -> dice.nextBoolean() ? Symptom.SPEAKS : Symptom.FAILS;
        };
    }

    static AirInput brief(AirInput in) {
        return new AirInput(
                in.air(),
                in.bore(),
                in.mouthpiece(),
                in.bell(),
                in.holes(),
                in.fingerings(),
                in.leaks(),
                true,
                false,
                1,
                false,
                null);
    }

    static double[] magnitudes(AirInput in) {
        return AirColumn.reckon(brief(in)).fingerings().stream()
                .mapToDouble(v -> Objects.requireNonNull(v.sounding()).magnitude())
                .toArray();
    }
}
