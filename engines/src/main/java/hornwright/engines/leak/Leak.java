package hornwright.engines.leak;

import hornwright.engines.leak.Opening.Decay;
import hornwright.engines.leak.Opening.Orifice;
import hornwright.engines.leak.Opening.Slot;
import hornwright.engines.leak.Opening.Slots;

/**
 * Flow through slots and holes, and the one hole that leaks as much.
 *
 * <p>Slots: ΔP = 12 μ w V / h² + K ρ V² / 2, fully developed laminar flow between plates plus entrance and exit loss.
 * Holes: Q = C A √(2ΔP/ρ). Density is held at room pressure, so errors grow to 2 % at 4 kPa.
 */
public final class Leak {
    /** Discharge of a sharp-edged hole, from memory of handbooks; good to 3 % for Reynolds numbers above 1000. */
    public static final double SHARP_EDGE = 0.61;

    private Leak() {}

    /** Flow, speed, Reynolds number and equivalent hole; see {@link LeakResult} for units. */
    public static LeakResult reckon(LeakInput input) {
        return switch (input.opening()) {
            case Slots slots -> throughSlots(slots, input);
            case Orifice hole -> throughHole(hole, input);
            case Decay decay -> throughHole(holeOf(decay, input.air()), input);
        };
    }

    /**
     * Mean speed (m/s) in a slot of this gap and seat width (m) under a pressure (Pa). The quadratic is solved in the
     * form that neither cancels for narrow gaps nor divides by a loss of zero.
     */
    public static double slotSpeed(double gap, double seatWidth, double pressure, double loss, RoomAir air) {
        if (gap == 0 || pressure == 0) {
            return 0;
        }
        double friction = 12 * air.viscosity() * seatWidth;
        double square = gap * gap;
        double root = Math.sqrt(friction * friction + 2 * loss * air.density() * pressure * square * square);
        return 2 * pressure * square / (friction + root);
    }

    private static LeakResult throughSlots(Slots slots, LeakInput input) {
        double flow = 0;
        double area = 0;
        double arc = 0;
        for (Slot slot : slots.slots()) {
            double speed = slotSpeed(slot.gap(), slot.seatWidth(), input.pressure(), input.loss(), input.air());
            flow += speed * slot.arc() * slot.gap();
            area += slot.arc() * slot.gap();
            arc += slot.arc();
        }
        double reynolds = arc == 0
                ? 0
                : 2 * input.air().density() * flow / (arc * input.air().viscosity());
        double hole = flow == 0 ? 0 : diameterOf(flow / (SHARP_EDGE * jetSpeed(input)));
        return new LeakResult(flow, area == 0 ? 0 : flow / area, reynolds, hole);
    }

    private static LeakResult throughHole(Orifice hole, LeakInput input) {
        double speed = hole.discharge() * jetSpeed(input);
        double area = Math.PI * hole.diameter() * hole.diameter() / 4;
        double reynolds =
                input.air().density() * speed * hole.diameter() / input.air().viscosity();
        double equivalent = hole.diameter() * Math.sqrt(hole.discharge() / SHARP_EDGE);
        return new LeakResult(area * speed, speed, reynolds, equivalent);
    }

    /**
     * Isothermal volume emptying through a sharp-edged hole: dP/dt = -(p₀/V) C A √(2P/ρ), so √P falls evenly with time.
     */
    private static Orifice holeOf(Decay decay, RoomAir air) {
        double fall = Math.sqrt(decay.from()) - Math.sqrt(decay.to());
        double perRoot = SHARP_EDGE * Math.sqrt(2 / air.density()) * RoomAir.PRESSURE;
        double area = 2 * decay.volume() * fall / (perRoot * decay.seconds());
        return new Orifice(diameterOf(area), SHARP_EDGE);
    }

    private static double jetSpeed(LeakInput input) {
        return Math.sqrt(2 * input.pressure() / input.air().density());
    }

    private static double diameterOf(double area) {
        return Math.sqrt(4 * area / Math.PI);
    }
}
