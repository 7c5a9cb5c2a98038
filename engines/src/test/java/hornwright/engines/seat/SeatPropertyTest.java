package hornwright.engines.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Profile.Point;
import hornwright.engines.seat.Profile.Points;
import hornwright.engines.seat.SeatInput.Mount.Free;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult.Position.Turned;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class SeatPropertyTest {
    private static final double R = 0.014;
    private static final double ARM = 0.0324;
    private static final PadStiffness SOFT = PadStiffness.even(1e5);
    private static final PadStiffness HARD = PadStiffness.even(5e5);

    private static SeatResult hinged(Profile rim, PadStiffness pad, double error, double torque) {
        return Seat.reckon(
                new SeatInput(R, rim, Profile.FLAT, pad, new Hinged(ARM, error, 0, 0, torque), 1.2e-3, 1000));
    }

    private static Harmonics wave(int order, double amplitude) {
        return new Harmonics(List.of(new Harmonic(order, amplitude, 0)));
    }

    /** A random rim of waves or of points, up to about 0.1 mm. */
    static Profile randomRim(Random random) {
        if (random.nextBoolean()) {
            List<Harmonic> terms = new ArrayList<>();
            for (int n = 0; n <= 1 + random.nextInt(6); n++) {
                terms.add(new Harmonic(n, 4e-5 * random.nextGaussian(), 4e-5 * random.nextGaussian()));
            }
            return new Harmonics(terms);
        }
        List<Point> points = new ArrayList<>();
        int count = 8 + random.nextInt(20);
        for (int i = 0; i < count; i++) {
            double angle = 2 * Math.PI * (i + 0.9 * random.nextDouble()) / count;
            points.add(new Point(angle, 5e-5 * random.nextGaussian()));
        }
        return new Points(points);
    }

    @Test
    void a_proud_pad_touches_at_the_back_first_and_a_shy_one_at_the_front() {
        assertThat(hinged(Profile.FLAT, SOFT, 2e-4, 0).firstTouch()).isCloseTo(Math.PI, within(1e-9));
        assertThat(hinged(Profile.FLAT, SOFT, -2e-4, 0).firstTouch()).isZero();
    }

    @Test
    void at_light_touch_the_opposite_edge_gapes_by_the_bench_formula() {
        double proud = hinged(Profile.FLAT, SOFT, 2e-4, 0).largestGap();
        double shy = hinged(Profile.FLAT, SOFT, -2e-4, 0).largestGap();
        assertThat(proud).isCloseTo(2e-4 * 2 * R / (ARM - R), Percentage.withPercentage(1e-9));
        assertThat(shy).isCloseTo(2e-4 * 2 * R / (ARM + R), Percentage.withPercentage(1e-9));
        assertThat(proud).isGreaterThan(shy);
    }

    @Test
    void a_soft_pad_forgives_a_rim_that_a_hard_one_does_not() {
        Profile rim = wave(2, 4e-5);
        double torque =
                (hinged(rim, SOFT, 0, 0).sealing() + hinged(rim, HARD, 0, 0).sealing()) / 2;
        assertThat(hinged(rim, SOFT, 0, torque).largestGap()).isZero();
        assertThat(hinged(rim, HARD, 0, torque).largestGap()).isGreaterThan(1e-6);
    }

    @Test
    void a_soft_skin_over_stiff_felt_lies_between_its_two_lines() {
        Profile rim = wave(3, 6e-5);
        PadStiffness both = new PadStiffness(1e5, 1e-4, 5e5);
        double sealing = hinged(rim, both, 0, 0).sealing();
        assertThat(sealing)
                .isBetween(
                        hinged(rim, SOFT, 0, 0).sealing(),
                        hinged(rim, HARD, 0, 0).sealing());
        SeatInput loose = new SeatInput(R, rim, Profile.FLAT, both, new Free(0.3), 1e-3, 1000);
        assertThat(Seat.reckon(loose).sealing()).isGreaterThan(2 * Math.PI * R * 1e5 * 6e-5);
    }

    @Test
    void a_level_pad_on_a_level_rim_seals_at_any_torque() {
        SeatResult level = hinged(Profile.FLAT, SOFT, 0, 0.01);
        assertThat(level.contactFraction()).isCloseTo(1, within(1e-12));
        assertThat(level.sealing()).isCloseTo(0, within(1e-12));
        assertThat(level.leak()).isZero();
        assertThat(level.firstTouch()).isZero();
    }

    @Test
    void a_crowned_face_and_a_crowned_rim_are_one_and_the_same() {
        Hinged mount = new Hinged(ARM, 3e-5, 0, 0, 0.01);
        SeatResult rim = Seat.reckon(new SeatInput(R, wave(2, 5e-5), Profile.FLAT, SOFT, mount, 1e-3, 1000));
        SeatResult face = Seat.reckon(new SeatInput(R, Profile.FLAT, wave(2, 5e-5), SOFT, mount, 1e-3, 1000));
        assertThat(face).isEqualTo(rim);
    }

    @Test
    void more_torque_never_opens_a_gap() {
        Random random = new Random(3);
        for (int i = 0; i < 60; i++) {
            Profile rim = randomRim(random);
            double error = 1e-4 * random.nextGaussian();
            SeatResult before = hinged(rim, SOFT, error, 0);
            for (double torque = 0.002; torque < 0.04; torque *= 2) {
                SeatResult after = hinged(rim, SOFT, error, torque);
                assertThat(after.largestGap()).isLessThanOrEqualTo(before.largestGap() + 1e-12);
                assertThat(after.leak()).isLessThanOrEqualTo(before.leak() * (1 + 1e-9) + 1e-15);
                assertThat(after.contactFraction()).isGreaterThanOrEqualTo(before.contactFraction() - 1e-9);
                before = after;
            }
        }
    }

    @Test
    void the_sealing_torque_just_closes_the_last_gap() {
        Random random = new Random(4);
        for (int i = 0; i < 100; i++) {
            Profile rim = randomRim(random);
            double error = 1e-4 * random.nextGaussian();
            double least = hinged(rim, SOFT, error, 0).sealing();
            assertThat(hinged(rim, SOFT, error, least * 1.0001).largestGap()).isZero();
            assertThat(hinged(rim, SOFT, error, least * 0.999).largestGap()).isPositive();
        }
    }

    @Test
    void the_sealing_force_of_a_loose_disc_just_closes_the_last_gap() {
        Random random = new Random(5);
        PadStiffness both = new PadStiffness(1e5, 5e-5, 4e5);
        for (int i = 0; i < 40; i++) {
            PadStiffness pad = i % 2 == 0 ? SOFT : both;
            Profile rim = randomRim(random);
            double least = loose(rim, pad, 0.1).sealing();
            if (least == 0) { // nothing but height and tilt, which a loose disc follows
                assertThat(loose(rim, pad, 1e-3).largestGap()).isZero();
                continue;
            }
            assertThat(loose(rim, pad, least * 1.0001).largestGap()).isZero();
            assertThat(loose(rim, pad, least * 0.999).largestGap()).isPositive();
        }
    }

    private static SeatResult loose(Profile rim, PadStiffness pad, double force) {
        return Seat.reckon(new SeatInput(R, rim, Profile.FLAT, pad, new Free(force), 1.2e-3, 1000));
    }

    @Test
    void a_loose_disc_does_not_care_about_tilt_of_the_rim() {
        SeatResult flat = loose(wave(3, 4e-5), SOFT, 0.2);
        Harmonics tilted = new Harmonics(List.of(new Harmonic(3, 4e-5, 0), new Harmonic(1, 2e-4, -1e-4)));
        SeatResult leaning = loose(tilted, SOFT, 0.2);
        assertThat(leaning.leak()).isCloseTo(flat.leak(), Percentage.withPercentage(1e-6));
        assertThat(leaning.contactFraction()).isCloseTo(flat.contactFraction(), within(1e-8));
    }

    @Test
    void the_work_of_the_torque_is_what_the_pad_stores() {
        Random random = new Random(6);
        for (int i = 0; i < 20; i++) {
            Profile rim = randomRim(random);
            double work = 0;
            double torqueBefore = 0;
            double before = rotation(hinged(rim, SOFT, 0, 0));
            int steps = 400;
            SeatResult end = hinged(rim, SOFT, 0, 0);
            for (int k = 1; k <= steps; k++) {
                double torque = 0.02 * k / steps;
                end = hinged(rim, SOFT, 0, torque);
                work += (torque + torqueBefore) / 2 * (rotation(end) - before);
                before = rotation(end);
                torqueBefore = torque;
            }
            assertThat(work).isCloseTo(end.energy(), Percentage.withPercentage(0.1));
        }
    }

    private static double rotation(SeatResult result) {
        return ((Turned) result.position()).rotation();
    }
}
