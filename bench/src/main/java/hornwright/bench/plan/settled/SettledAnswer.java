package hornwright.bench.plan.settled;

import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.regulation.Watch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a horn stands once its new material has packed.
 *
 * @param heights of the cups whose stop carries something new
 * @param contacts with something new in them, in the order of the keywork
 * @param gaps under every cup one of those contacts decides
 * @param vents of the octave mechanism, in the states that open them
 * @param days after the material was laid at which to look again
 * @param over of the packing by then, in hundredths
 */
public record SettledAnswer(
        List<HeightLine> heights,
        List<ContactLine> contacts,
        List<GapLine> gaps,
        List<VentLine> vents,
        PlannedNumber days,
        PlannedNumber over,
        Becauses becauses) {
    public SettledAnswer {
        heights = List.copyOf(heights);
        contacts = List.copyOf(contacts);
        gaps = List.copyOf(gaps);
        vents = List.copyOf(vents);
    }

    /**
     * One cup.
     *
     * @param set height it is set to
     * @param settled height after packing
     * @param rises from the one to the other
     */
    public record HeightLine(String cup, PlannedNumber set, PlannedNumber settled, PlannedNumber rises) {}

    /**
     * One contact.
     *
     * @param loses of its thickness, which is the lost motion it gains
     */
    public record ContactLine(String link, PlannedNumber loses) {}

    /**
     * One cup under one finger.
     *
     * @param opens how far the gap opens by the packing, below zero closes
     * @param gap then, below zero pressed in
     * @param shut whether that still counts as shut
     */
    public record GapLine(Watch watch, PlannedNumber opens, PlannedNumber gap, boolean shut) {}

    /**
     * One octave vent in the state that opens it.
     *
     * @param state "thumb down, G up"
     * @param opens how far it opens once its contacts have packed
     * @param less than before they packed
     */
    public record VentLine(String state, String cup, PlannedNumber opens, PlannedNumber less) {}

    /** Whether anything moves at all. */
    public boolean moves() {
        return !heights.isEmpty() || !contacts.isEmpty();
    }

    public List<GapLine> open() {
        return gaps.stream().filter(line -> !line.shut()).toList();
    }

    /** The widest of the gaps that open. */
    public Optional<GapLine> widest() {
        return open().stream().max(Comparator.comparingDouble(line -> line.gap().value()));
    }
}
