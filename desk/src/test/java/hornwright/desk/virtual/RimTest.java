package hornwright.desk.virtual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.seat.PadStiffness;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Seat;
import hornwright.engines.seat.SeatInput;
import java.util.List;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** The quick rim of the virtual bench against the seat engine. */
final class RimTest {
    private static final double MM = 1e-3;

    @RepeatedTest(20)
    void the_torque_that_shuts_a_pad_is_that_of_the_engine(RepetitionInfo run) {
        Draw draw = Draw.of(run.getCurrentRepetition(), "rim");
        double two = draw.within(0, 0.03);
        double three = draw.within(0, 0.01);
        double turned = draw.within(0, Math.PI);
        Rim rim = Rim.of(new Rim.Wave(2, two, turned), new Rim.Wave(3, three, 0));
        Rim.Pad pad = new Rim.Pad(14, 33, draw.normal(0.1), draw.normal(0.003), draw.normal(0.003), 0.2);
        Profile waves = new Profile.Harmonics(List.of(
                new Profile.Harmonic(2, MM * two * Math.cos(2 * turned), MM * two * Math.sin(2 * turned)),
                new Profile.Harmonic(3, MM * three, 0)));
        SeatInput.Mount mount = new SeatInput.Mount.Hinged(MM * 33, MM * pad.proud(), pad.front(), pad.side(), 0);
        SeatInput input = new SeatInput(MM * 14, waves, Profile.FLAT, PadStiffness.even(0.2e6), mount, MM, 0);
        double engine = Seat.reckon(input).sealing() / MM;
        assertThat(rim.torqueToShut(pad, 0)).isCloseTo(engine, within(0.01 * engine));
    }
}
