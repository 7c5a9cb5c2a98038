package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirResult;
import hornwright.engines.air.AirResult.Peak;
import hornwright.engines.air.AirResult.Sensitivity;
import java.util.List;

/**
 * Cents per millimetre at the front edge, for every note and every cup that stands open for it.
 *
 * @param perMm by fingering and cup, both in the order of the keywork; 0 where the cup is shut
 * @param frequencies of the sounding resonance, Hz; NaN where there is none
 */
public record HeightEffects(double[][] perMm, double[] frequencies) {
    /** Reckons them at the heights of a horn, as far as it is known. */
    public static HeightEffects of(Keywork keywork, Air air, HornShape shape) {
        AirResult result = AirColumn.resonances(asked(HornAir.of(keywork, air, shape), true));
        List<Cup> cups = keywork.cups().list();
        double[][] perMm = new double[result.fingerings().size()][cups.size()];
        for (int i = 0; i < perMm.length; i++) {
            for (Sensitivity s : result.fingerings().get(i).sensitivities()) {
                Cup cup = cups.get(s.hole());
                double centre = shape.centrePerFront(cup, keywork.holeOf(cup));
                perMm[i][s.hole()] = s.centsPerMetre() / 1e3 * centre;
            }
        }
        return new HeightEffects(perMm, frequencies(result));
    }

    /** Sounding frequencies of a horn, as far as it is known. */
    public static double[] frequencies(Keywork keywork, Air air, HornShape shape) {
        return frequencies(AirColumn.resonances(asked(HornAir.of(keywork, air, shape), false)));
    }

    static double[] frequencies(AirResult result) {
        return result.fingerings().stream()
                .mapToDouble(voicing -> {
                    Peak peak = voicing.sounding();
                    return peak == null ? Double.NaN : peak.frequency();
                })
                .toArray();
    }

    /** The same horn asked for its sounding resonances only. */
    static AirInput asked(AirInput in, boolean sensitivity) {
        return new AirInput(
                in.air(),
                in.bore(),
                in.mouthpiece(),
                in.bell(),
                in.holes(),
                in.fingerings(),
                in.leaks(),
                in.losses(),
                in.interaction(),
                1,
                sensitivity,
                null);
    }

    static double cents(double from, double to) {
        return 1200 * Math.log(to / from) / Math.log(2);
    }
}
