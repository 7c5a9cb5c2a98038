package hornwright.bench.regulation;

import java.util.List;

/**
 * All contacts put right at once.
 *
 * @param readings it rests on, in their order
 * @param corrections in the order in which the bench sets links: what a key drives before what drives it
 * @param expected gaps that should be left, pressed as hard as regulation is judged
 */
public record RegulationPlan(List<Counted> readings, List<Correction> corrections, List<Expected> expected) {
    public RegulationPlan {
        readings = List.copyOf(readings);
        corrections = List.copyOf(corrections);
        expected = List.copyOf(expected);
    }

    /**
     * A reading and the uncertainty it was counted with: where no leaf went in, how deep the pad is pressed in is hardly
     * known.
     */
    public record Counted(Feeler feeler, double uMm) {}

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
