package hornwright.engines.seat;

import hornwright.engines.seat.SeatInput.Mount.Hinged;

/**
 * A pad that can only turn about its hinge. Compression rises everywhere as the key turns, so first touch, sealing and
 * rest are roots of rising functions of one angle.
 */
record HingedPad(Ring open, PadStiffness pad, double radius, double arm) {

    static HingedPad of(SeatInput input, Hinged mount) {
        double front = mount.tiltFront() * input.radius();
        double side = mount.tiltSide() * input.radius();
        Ring open = Ring.of(input.rim(), input.face()).moved(mount.heightError(), front, side);
        return new HingedPad(open, input.pad(), input.radius(), mount.arm());
    }

    /** The ring when the key has turned by an angle past nominal. */
    Ring turned(double rotation) {
        return open.moved(arm * rotation, radius * rotation, 0);
    }

    Push push(double rotation) {
        return Push.of(turned(rotation), pad, radius);
    }

    /** Rotation at which the first point touches. */
    double touching() {
        return rotation(true);
    }

    /** Rotation at which the last gap closes. */
    double sealing() {
        return rotation(false);
    }

    /**
     * Newton on max u (convex) or min u (concave) as functions of the rotation: from any start the first step lands on
     * the far side of the root and the rest approach it without overshoot.
     */
    private double rotation(boolean first) {
        double rotation = 0;
        for (int i = 0; i < 100; i++) {
            Ring ring = turned(rotation);
            Ring.Spot spot = first ? ring.highest() : ring.lowest();
            double step = spot.height() / (arm + radius * Math.cos(spot.angle()));
            rotation -= step;
            if (Math.abs(step) < 1e-16) {
                break;
            }
        }
        return rotation;
    }

    /** Rotation at which the pad balances a torque. */
    double resting(double torque, double touching, double sealing) {
        if (torque == 0) {
            return touching;
        }
        double low = touching;
        double high = sealing + torque / leastRate();
        double at = high;
        for (int i = 0; i < 200; i++) {
            Push push = push(at);
            double excess = push.torque(arm) - torque;
            if (excess > 0) {
                high = at;
            } else {
                low = at;
            }
            double next = at - excess / push.torqueRate(arm);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(excess) < 1e-14 * torque || next == at) {
                break;
            }
            at = next;
        }
        return at;
    }

    /** With contact all round the torque rises at least this fast, N m/rad. */
    private double leastRate() {
        double soft = Math.min(pad.skin(), pad.felt());
        return 2 * Math.PI * soft * radius * (arm * arm + radius * radius / 2);
    }
}
