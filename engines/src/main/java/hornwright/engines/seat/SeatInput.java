package hornwright.engines.seat;

/**
 * A pad over a tone hole.
 *
 * @param radius of the rim, m
 * @param rim height of the rim
 * @param face height of the pad's face
 * @param pad how the pad gives
 * @param mount what carries and loads it
 * @param seatWidth width of the seat along the flow, m
 * @param pressure that drives the leak, Pa
 */
public record SeatInput(
        double radius, Profile rim, Profile face, PadStiffness pad, Mount mount, double seatWidth, double pressure) {
    public SeatInput {
        if (!(radius > 0) || !(seatWidth >= 0) || !(pressure >= 0)) {
            throw new IllegalArgumentException("radius is above zero, seat width and pressure not below");
        }
        if (mount instanceof Mount.Hinged hinged && !(hinged.arm() > radius)) {
            throw new IllegalArgumentException("the hinge lies outside the rim");
        }
    }

    /** What carries the pad. */
    public sealed interface Mount {
        /**
         * A cup on a key that turns about a hinge.
         *
         * @param arm hinge to centre of the hole, m
         * @param heightError how much too thick the pad stands, m (positive: proud)
         * @param tiltFront tilt of the cup, positive: front lower, rad
         * @param tiltSide tilt of the cup, positive: positive side lower, rad
         * @param torque on the key, N m
         */
        record Hinged(double arm, double heightError, double tiltFront, double tiltSide, double torque)
                implements Mount {
            public Hinged {
                if (!(torque >= 0) || !Double.isFinite(heightError + tiltFront + tiltSide + torque)) {
                    throw new IllegalArgumentException("the torque closes; errors are finite");
                }
            }
        }

        /** A loose disc pressed by a force (N) through its centre. */
        record Free(double force) implements Mount {
            public Free {
                if (!(force >= 0) || !Double.isFinite(force)) {
                    throw new IllegalArgumentException("the force presses");
                }
            }
        }
    }
}
