package hornwright.engines.seat;

import hornwright.engines.seat.SeatInput.Mount.Free;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult.Position;

/**
 * A pad on a rim as a ring of springs that can push but not pull.
 *
 * <p>Compression at the angle φ from the front is u = (arm + R cos φ) q + error + tilts + profiles; the pad pushes with
 * its stiffness times max(0, u). Corners and crossings are located to rounding and the pieces integrated by Gauss, so
 * results are exact to about 1e-10 for the model; the model itself (separate springs) is the error that counts.
 */
public final class Seat {
    private Seat() {}

    /** Rest, gaps, leak, sealing load and first touch; units in {@link SeatResult}. */
    public static SeatResult reckon(SeatInput input) {
        return switch (input.mount()) {
            case Hinged hinged -> hinged(input, hinged);
            case Free free -> free(input, free);
        };
    }

    private static SeatResult hinged(SeatInput input, Hinged mount) {
        HingedPad pad = HingedPad.of(input, mount);
        double touching = pad.touching();
        double sealing = pad.sealing();
        double rotation = pad.resting(mount.torque(), touching, sealing);
        double least = pad.push(sealing).torque(mount.arm());
        double first = pad.turned(touching).highest().angle();
        return seated(input, pad.turned(rotation), new Position.Turned(rotation), least, first);
    }

    private static SeatResult free(SeatInput input, Free mount) {
        FreePad pad = FreePad.of(input);
        FreePad.Rest rest = pad.resting(mount.force());
        Position position =
                new Position.Sunk(rest.descent(), rest.front() / input.radius(), rest.side() / input.radius());
        double first = pad.rim().highest().angle();
        return seated(input, pad.placed(rest), position, pad.sealing(), first);
    }

    private static SeatResult seated(SeatInput input, Ring ring, Position position, double sealing, double first) {
        Push push = Push.of(ring, input.pad(), input.radius());
        Gap gap = Gap.of(ring, input);
        Ring.Spot lowest = ring.lowest();
        boolean gapes = lowest.height() < -Ring.EQUAL;
        return new SeatResult(
                push.load[0],
                position,
                push.contactAngle / (2 * Math.PI),
                gapes ? -lowest.height() : 0,
                gapes ? lowest.angle() : 0,
                gap.cubed,
                gap.area,
                sealing,
                gap.leak,
                first,
                push.energy);
    }
}
