package hornwright.engines.air;

import hornwright.engines.air.AirInput.Curve;
import hornwright.engines.air.AirInput.Fingering;
import hornwright.engines.air.AirResult.ImpedanceCurve;
import hornwright.engines.air.AirResult.Peak;
import hornwright.engines.air.AirResult.Sensitivity;
import hornwright.engines.air.AirResult.Voicing;
import java.util.ArrayList;
import java.util.List;

/**
 * The air column of a horn: transfer matrices of short lossy cones, with tone holes as T circuits.
 *
 * <p>Resonances are good to 1e-4 Hz for the model. Against measured horns the model itself is the error: a few cents for
 * one hole, up to ten for many, more at a strongly flaring bell.
 */
public final class AirColumn {
    private AirColumn() {}

    /** Answers every fingering; units in {@link AirResult}. */
    public static AirResult reckon(AirInput input) {
        return reckon(input, true);
    }

    /** The same resonances without their quality and without soft and loud pitch; a fifth of the time. */
    public static AirResult resonances(AirInput input) {
        return reckon(input, false);
    }

    private static AirResult reckon(AirInput input, boolean whole) {
        Ladder ladder = new Ladder(input);
        Grid grid = new Grid(ladder);
        List<Voicing> all = new ArrayList<>();
        for (Fingering fingering : input.fingerings()) {
            all.add(voicing(input, ladder, grid, fingering, whole));
        }
        return new AirResult(all);
    }

    private static Voicing voicing(AirInput input, Ladder ladder, Grid grid, Fingering fingering, boolean whole) {
        Response response = response(input, ladder, fingering);
        Samples samples = samples(ladder, grid, fingering, response);
        List<Peak> peaks = new Peaks(samples, response, whole).lowest(Math.max(input.modes(), fingering.peak()));
        ImpedanceCurve curve = input.curve() == null ? null : curve(input.curve(), response);
        List<Peak> wanted = peaks.subList(0, Math.min(input.modes(), peaks.size()));
        if (peaks.size() < fingering.peak()) {
            return new Voicing(wanted, null, null, null, List.of(), curve);
        }
        Peak peak = peaks.get(fingering.peak() - 1);
        double sounding = peak.frequency();
        List<Sensitivity> sensitivities =
                input.sensitivity() ? Sensitivities.of(input, fingering, response, sounding) : List.of();
        if (!whole) {
            return new Voicing(wanted, peak, null, null, sensitivities, curve);
        }
        Playing playing = new Playing(samples, response);
        return new Voicing(wanted, peak, playing.soft(sounding), playing.loud(sounding), sensitivities, curve);
    }

    private static Response response(AirInput input, Ladder ladder, Fingering fingering) {
        return input.interaction() && !fingering.open().isEmpty()
                ? new Outdoors(ladder, fingering.open())
                : new Chain(ladder, fingering.open());
    }

    private static Samples samples(Ladder ladder, Grid grid, Fingering fingering, Response response) {
        if (response instanceof Chain) {
            boolean[] states = ladder.states(fingering.open());
            return new Samples(grid.step, index -> grid.admittance(index, states));
        }
        return new Samples(grid.step, index -> response.admittance(index * grid.step));
    }

    private static ImpedanceCurve curve(Curve wanted, Response response) {
        double[] frequency = new double[wanted.points()];
        double[] re = new double[wanted.points()];
        double[] im = new double[wanted.points()];
        for (int i = 0; i < wanted.points(); i++) {
            double share = wanted.points() == 1 ? 0 : i / (double) (wanted.points() - 1);
            frequency[i] = wanted.from() + (wanted.to() - wanted.from()) * share;
            Complex z = response.admittance(frequency[i]).inverse();
            re[i] = z.re();
            im[i] = z.im();
        }
        return new ImpedanceCurve(frequency, re, im);
    }
}
