package hornwright.engines.seat;

/**
 * How a pad sits.
 *
 * @param force of the whole pad on the rim, N
 * @param position where key or disc came to rest
 * @param contactFraction share of the angle that touches
 * @param largestGap m
 * @param largestGapAngle rad, the smallest if several are equal (0 when nothing gapes)
 * @param gapCubed ∮ gap³ dφ, m³
 * @param openArea ∮ gap R dφ, m²
 * @param sealing least torque (N m, hinged) or force (N, free) that leaves no gap
 * @param leak m³/s under the given pressure
 * @param firstTouch angle that touches first as the key closes, rad
 * @param energy stored in the pad, J
 */
public record SeatResult(
        double force,
        Position position,
        double contactFraction,
        double largestGap,
        double largestGapAngle,
        double gapCubed,
        double openArea,
        double sealing,
        double leak,
        double firstTouch,
        double energy) {

    /** Where it came to rest. */
    public sealed interface Position {
        /** Turned past nominal closing by this angle, rad. */
        record Turned(double rotation) implements Position {}

        /** Sunk by a descent (m) and tilted (rad). */
        record Sunk(double descent, double tiltFront, double tiltSide) implements Position {}
    }
}
