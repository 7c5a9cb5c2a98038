package hornwright.bench.plan.seat;

import hornwright.engines.leak.Leak;
import hornwright.engines.leak.RoomAir;
import hornwright.engines.seat.PadStiffness;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Seat;
import hornwright.engines.seat.SeatInput;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult;
import hornwright.engines.seat.SeatResult.Position.Turned;
import java.util.ArrayList;
import java.util.List;

/**
 * One pad as the seat engine wants it. The rim is a saddle: as deep as the worst gap under a flat disc, deepest at the
 * clock position read and opposite, which is how rims mostly go.
 *
 * @param proudMm how proud the pad stands
 * @param tiltRad of the cup to the side
 * @param seatMPa stiffness of the pad's skin
 * @param feltMPa the same of its felt, which takes over after {@code feltFromMm}
 * @param loadN on the pad's centre
 */
record Closing(
        double holeMm,
        double armMm,
        double rimGapMm,
        double clock,
        double proudMm,
        double tiltRad,
        double seatMPa,
        double feltMPa,
        double feltFromMm,
        double loadN,
        double widthMm) {
    static final double PRESSURE = 1000;
    private static final double ROOM = 293.15;
    private static final double MM = 1e-3;
    private static final double MEGA = 1e6;
    private static final int STEPS = 120;
    private static final double MILLILITRES = 1e6;

    boolean possible() {
        return armMm > holeMm / 2
                && holeMm > 0
                && seatMPa > 0
                && feltMPa > 0
                && loadN >= 0
                && rimGapMm >= 0
                && widthMm > 0;
    }

    SeatResult result() {
        return Seat.reckon(new SeatInput(
                holeMm / 2 * MM,
                rim(),
                Profile.FLAT,
                new PadStiffness(seatMPa * MEGA, feltFromMm * MM, feltMPa * MEGA),
                new Hinged(armMm * MM, proudMm * MM, 0, tiltRad, loadN * armMm * MM),
                widthMm * MM,
                PRESSURE));
    }

    /** Gap in mm, leak in mL/s, equivalent hole in mm, sealing force on the pad in N. */
    double[] figures() {
        SeatResult result = result();
        double leak = result.leak() * MILLILITRES;
        return new double[] {result.largestGap() / MM, leak, holeOf(leak), result.sealing() / (armMm * MM)};
    }

    /** The sharp-edged hole that lets through so much at the same pressure, mm. */
    static double holeOf(double millilitres) {
        double speed =
                Leak.SHARP_EDGE * Math.sqrt(2 * PRESSURE / RoomAir.at(ROOM).density());
        return Math.sqrt(4 * millilitres / MILLILITRES / (Math.PI * speed)) / MM;
    }

    private Profile rim() {
        double at = 2 * angle(clock);
        double deep = -rimGapMm * MM / 2;
        return new Harmonics(List.of(new Harmonic(2, deep * Math.cos(at), deep * Math.sin(at))));
    }

    static double angle(double clock) {
        return clock / 12 * 2 * Math.PI;
    }

    static double clock(double angle) {
        double hours = angle / (2 * Math.PI) * 12;
        return hours < 0.05 ? 12 : hours;
    }

    /** Gaps in mm by the clock from 12 round to 12. */
    List<Double> round() {
        double q = ((Turned) result().position()).rotation();
        double at = 2 * angle(clock);
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double f = 2 * Math.PI * i / STEPS;
            double u = (armMm + holeMm / 2 * Math.cos(f)) * q
                    + proudMm
                    + tiltRad * holeMm / 2 * Math.sin(f)
                    - rimGapMm / 2 * Math.cos(2 * f - at);
            gaps.add(Math.max(0, -u));
        }
        return gaps;
    }
}
