package hornwright.bench.plan.pads;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedNumber;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which pad thicknesses work in a cup.
 *
 * @param wanted thickness that leaves the film aimed at, with the window when one is claimed
 * @param choices stocked thicknesses near it
 * @param chosen the one to take; null when the window is not known or nothing stocked lies in it
 * @param left adhesive the chosen one leaves; null with it
 */
record PadWindow(
        PlannedNumber wanted,
        List<PadChoice> choices,
        @Nullable PlannedNumber chosen,
        @Nullable PlannedNumber left) {
    PadWindow {
        choices = List.copyOf(choices);
    }

    boolean claimed() {
        return wanted.hasWindow();
    }

    void put(Map<NumberName, PlannedNumber> numbers) {
        numbers.put(NumberName.THICKNESS, wanted);
        if (chosen != null) {
            numbers.put(NumberName.CHOSEN_THICKNESS, chosen);
        }
        if (left != null) {
            numbers.put(NumberName.FLOAT, left);
        }
    }
}
