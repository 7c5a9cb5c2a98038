package hornwright.bench.octave;

import hornwright.bench.plan.measured.ClearanceBand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One contact over all states that were read: a bend moves its gap by as much in every state, so the bends that suit all
 * of them are what the states leave in common.
 */
final class Contact {
    /** What was read in one state, and what it should be. */
    record Seen(String state, double mm, ClearanceBand band) {}

    /** A bend, in millimetres of gap; positive opens. */
    record Bend(double fromMm, double toMm) {
        /** The least bend that does it; 0 when nothing has to be bent. */
        double least() {
            if (fromMm > 0) {
                return fromMm;
            }
            return toMm < 0 ? toMm : 0;
        }
    }

    private final List<Seen> seen = new ArrayList<>();

    void see(Seen one) {
        seen.add(one);
    }

    List<Seen> seen() {
        return List.copyOf(seen);
    }

    boolean good() {
        return seen.stream().allMatch(one -> one.band().holds(one.mm()));
    }

    /** The bends after which every state is in its band; empty when no bend of this contact alone will do. */
    Optional<Bend> bend() {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        for (Seen one : seen) {
            ClearanceBand band = one.band();
            if (!band.touches()) {
                from = Math.max(from, band.fromMm() - one.mm());
                to = Math.min(to, band.toMm() - one.mm());
            } else if (!band.holds(one.mm())) {
                // Bent further into its work a contact still touches; the vent then only opens wider.
                to = Math.min(to, band.toMm() - one.mm());
            }
        }
        return from <= to && !seen.isEmpty() ? Optional.of(new Bend(from, to)) : Optional.empty();
    }
}
