package hornwright.bench.plan.seat;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import java.util.List;

/**
 * All pads of a horn together. It is a forecast of the pads alone: neck, joints, rings and braces are not in it, and it
 * passes nothing.
 *
 * @param leak of all pads at a light touch and 1 kPa, mL/s
 * @param hole the one sharp-edged hole that leaks as much, mm
 */
public record SeatTotal(PlannedNumber leak, PlannedNumber hole, Becauses becauses) {
    public static SeatTotal of(List<SeatAnswer> pads) {
        Reasons reasons = new Reasons();
        List<Because.Input> inputs = pads.stream()
                .map(pad -> Because.Input.of(pad.name(), pad.leak()))
                .toList();
        if (inputs.isEmpty()) {
            throw new IllegalArgumentException("a horn without pads has no total");
        }
        PlannedNumber leak = reasons.derive(
                "seat/total", "leaks of all pads at a light touch, added", "mL/s", SeatTotal::sum, inputs);
        Moved moved = Moved.of(new double[] {leak.value()}, List.of(Because.Input.of("leak of all pads", leak)), x ->
                new double[] {Closing.holeOf(Math.max(0, x[0]))});
        PlannedNumber plain = reasons.derive(
                "seat/total hole",
                "the one sharp-edged hole that leaks as much at 1 kPa",
                "mm",
                in -> moved.value(0),
                Because.Input.of("leak of all pads", leak));
        PlannedNumber hole = new PlannedNumber(plain.value(), "mm", moved.u(0), plain.because(), null, null, null);
        Becauses all = reasons.table();
        for (SeatAnswer pad : pads) {
            all = all.and(pad.becauses());
        }
        return new SeatTotal(leak, hole, all);
    }

    private static double sum(double[] leaks) {
        double sum = 0;
        for (double leak : leaks) {
            sum += leak;
        }
        return sum;
    }
}
