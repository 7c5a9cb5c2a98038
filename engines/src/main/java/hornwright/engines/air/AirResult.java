package hornwright.engines.air;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The answer for every fingering, in input order. */
public record AirResult(List<Voicing> fingerings) {
    public AirResult {
        fingerings = List.copyOf(fingerings);
    }

    /**
     * One fingering.
     *
     * @param peaks the lowest resonances, ascending
     * @param sounding the one that sounds; null if the fingering has not so many
     * @param soft where a soft note plays: zero of the reactance nearest the sounding peak, Hz; null if there is none
     * @param loud where a loud note plays: its harmonics have their say, Hz; null if there is none
     * @param sensitivities for every open hole with a pad; empty when not asked or when the peak is not there
     * @param curve null when not asked
     */
    public record Voicing(
            List<Peak> peaks,
            @Nullable Peak sounding,
            @Nullable Double soft,
            @Nullable Double loud,
            List<Sensitivity> sensitivities,
            @Nullable ImpedanceCurve curve) {
        public Voicing {
            peaks = List.copyOf(peaks);
            sensitivities = List.copyOf(sensitivities);
        }

        public boolean sounds() {
            return sounding != null;
        }
    }

    /**
     * A local maximum of the input impedance.
     *
     * @param frequency Hz, good to 1e-4
     * @param magnitude Pa s/m³; infinite without any loss
     * @param quality frequency over the width at magnitude/√2; null if that is not reached on both flanks
     */
    public record Peak(
            double frequency, double magnitude, @Nullable Double quality) {}

    /**
     * What a pad height does.
     *
     * @param hole index into the holes
     * @param centsPerMetre change of pitch per height at the cup centre, cents/m
     */
    public record Sensitivity(int hole, double centsPerMetre) {}

    /** Input impedance, Pa s/m³, at frequencies in Hz. */
    public record ImpedanceCurve(double[] frequency, double[] re, double[] im) {}
}
