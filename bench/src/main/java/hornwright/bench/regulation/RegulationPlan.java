package hornwright.bench.regulation;

import java.util.List;

/**
 * All contacts put right at once.
 *
 * @param corrections in the order in which the bench sets links: what a key drives before what drives it
 * @param expected gaps that should be left, pressed as hard as regulation is judged
 */
public record RegulationPlan(List<Correction> corrections, List<Expected> expected) {
    public RegulationPlan {
        corrections = List.copyOf(corrections);
        expected = List.copyOf(expected);
    }

    /**
     * A watched cup and the gap expected there; negative: pressed in.
     *
     * @param uMm one standard uncertainty, from the readings and from cutting
     */
    public record Expected(Watch watch, double gapMm, double uMm) {}

    /** The largest gap expected anywhere. */
    public double worstMm() {
        return expected.stream().mapToDouble(Expected::gapMm).max().orElse(0);
    }
}
