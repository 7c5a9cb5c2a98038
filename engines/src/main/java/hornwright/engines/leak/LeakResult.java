package hornwright.engines.leak;

/**
 * What a leak lets through.
 *
 * @param flow m³/s at room pressure
 * @param speed mean speed through the area of the opening, m/s (flow = speed × area)
 * @param reynolds 2ρQ/(arc μ) for slots, ρVd/μ for a hole; a slot is laminar below about 2000
 * @param equivalentHole diameter of the sharp-edged hole, discharge 0.61, with the same flow at the same pressure, m
 */
public record LeakResult(double flow, double speed, double reynolds, double equivalentHole) {}
