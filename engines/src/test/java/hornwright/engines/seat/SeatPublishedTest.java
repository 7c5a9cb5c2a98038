package hornwright.engines.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.SeatInput.Mount.Free;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult.Position.Turned;
import java.util.List;
import org.junit.jupiter.api.Test;

class SeatPublishedTest {
    private static final double R = 0.009;
    private static final PadStiffness PAD = PadStiffness.even(2e5);
    private static final double TILT = 0.01;
    private static final double WARP = 50e-6;
    private static final double ARM = 0.03;

    /** A tilted cup held where just the arc of this half-angle touches; the torque is the closed form's. */
    private static SeatResult tilted(double beta) {
        double error = -TILT * R * Math.cos(beta);
        double force = 2 * 2e5 * R * R * TILT * (Math.sin(beta) - beta * Math.cos(beta));
        double moment = 2e5 * R * R * R * TILT * (beta - Math.sin(beta) * Math.cos(beta));
        Hinged mount = new Hinged(ARM, error, TILT, 0, force * ARM + moment);
        return Seat.reckon(new SeatInput(R, Profile.FLAT, Profile.FLAT, PAD, mount, 1e-3, 1000));
    }

    private static SeatResult warped(double force) {
        Harmonics rim = new Harmonics(List.of(new Harmonic(2, WARP, 0)));
        return Seat.reckon(new SeatInput(R, rim, Profile.FLAT, PAD, new Free(force), 1e-3, 1000));
    }

    @Test
    void a_tilted_pad_rests_as_the_closed_form_says() {
        Ref ref = Ref.read("seat/tilt");
        SeatResult half = tilted(Math.PI / 2);
        ref.check("force_N", half.force(), 1);
        ref.check("open_area_m2", half.openArea(), 1);
        assertThat(half.contactFraction()).isCloseTo(0.5, within(1e-10));
        assertThat(((Turned) half.position()).rotation()).isCloseTo(0, within(1e-13));
        assertThat(half.largestGap()).isCloseTo(TILT * R, within(1e-12));
        assertThat(half.largestGapAngle()).isCloseTo(Math.PI, within(1e-9));
    }

    @Test
    void the_force_line_of_a_tilted_pad_lies_where_published() {
        Ref ref = Ref.read("seat/tilt");
        Push half = push(Math.PI / 2);
        ref.check("moment_Nm", R * half.load[1], 1);
        ref.check("eccentricity_share", half.load[1] / half.load[0], 1);
        ref.check("eccentricity_share_0.5", push(0.5).load[1] / push(0.5).load[0], 1);
        ref.check("eccentricity_share_pi/3", push(Math.PI / 3).load[1] / push(Math.PI / 3).load[0], 1);
        ref.check("eccentricity_share_2pi/3", push(2 * Math.PI / 3).load[1] / push(2 * Math.PI / 3).load[0], 1);
    }

    private static Push push(double beta) {
        return Push.of(Ring.of(Profile.FLAT).moved(-TILT * R * Math.cos(beta), TILT * R, 0), PAD, R);
    }

    @Test
    void a_warped_rim_under_a_loose_disc_closes_as_the_closed_form_says() {
        Ref ref = Ref.read("seat/warp");
        SeatResult half = warped(ref.number("force_half_N"));
        ref.check("open_area_half_m2", half.openArea(), 1);
        ref.check("sealing_N", half.sealing(), 1);
        assertThat(half.contactFraction()).isCloseTo(0.5, within(1e-9));
        assertThat(half.largestGap()).isCloseTo(WARP, within(1e-12));
        assertThat(half.largestGapAngle()).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(half.firstTouch()).isZero();
        for (String s : List.of("0.5", "1", "2", "3")) {
            double share = forceShare(Double.parseDouble(s));
            ref.check("force_share_" + s, share, 1);
            assertThat(warped(share * half.sealing()).contactFraction())
                    .isCloseTo(Double.parseDouble(s) / Math.PI, within(1e-9));
        }
    }

    private static double forceShare(double s) {
        return (Math.sin(s) - s * Math.cos(s)) / Math.PI;
    }

    @Test
    void the_leak_integral_has_its_closed_form() {
        Ref ref = Ref.read("seat/leak-integral");
        double sealing = warped(0).sealing();
        double cube = WARP * WARP * WARP;
        assertThat(ref.number("G0")).isCloseTo(5 * Math.PI, within(1e-6));
        ref.check("G0", warped(0).gapCubed(), cube);
        ref.check("G1", warped(sealing * forceShare(1)).gapCubed(), cube);
        ref.check("Gpi/2", warped(sealing / Math.PI).gapCubed(), cube);
        ref.check("G2", warped(sealing * forceShare(2)).gapCubed(), cube);
    }

    @Test
    void the_lowest_point_of_tilt_and_warp_is_exact() {
        Ref ref = Ref.read("seat/lowest");
        ref.check("first", lowest(0.08, 0.1, 0.05), 1);
        assertThat(lowest(0.075, 0.1, 0.05)).isCloseTo(0, within(1e-15));
        ref.check("third", lowest(0.15, 0.3, 0.05), 1);
        ref.check("fourth", lowest(0.1, 0.04, -0.05), 1);
    }

    private static double lowest(double a, double b, double warp) {
        Harmonics sum = new Harmonics(List.of(new Harmonic(0, a, 0), new Harmonic(1, b, 0), new Harmonic(2, warp, 0)));
        return Ring.of(sum).lowest().height();
    }
}
