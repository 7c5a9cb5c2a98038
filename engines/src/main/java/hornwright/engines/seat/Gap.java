package hornwright.engines.seat;

import hornwright.engines.leak.Leak;
import hornwright.engines.leak.RoomAir;

/** What stays open, summed round the ring. */
final class Gap implements Ring.Sink {
    /** Kinetic energy lost plus half of it at the entrance; from memory of handbooks. */
    private static final double LOSS = 1.5;

    private static final RoomAir AIR = RoomAir.at(293.15);

    private final SeatInput input;
    double cubed;
    double area;
    double leak;

    private Gap(SeatInput input) {
        this.input = input;
    }

    static Gap of(Ring ring, SeatInput input) {
        Gap gap = new Gap(input);
        ring.integrate(new double[] {0}, gap);
        return gap;
    }

    @Override
    public void add(double angle, double weight, double compression) {
        if (compression >= 0) {
            return;
        }
        double gap = -compression;
        double speed = Leak.slotSpeed(gap, input.seatWidth(), input.pressure(), LOSS, AIR);
        cubed += weight * gap * gap * gap;
        area += weight * gap * input.radius();
        leak += weight * gap * input.radius() * speed;
    }
}
