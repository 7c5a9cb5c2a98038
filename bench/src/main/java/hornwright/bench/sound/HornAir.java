package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Bell;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.End;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Mouthpiece;
import hornwright.engines.air.AirInput.Pad;
import java.util.List;

/** The air column of a keywork: holes and fingerings in the order of the keywork, heights at the cup centre. */
public final class HornAir {
    private HornAir() {}

    /** With every pad at its factory height; heights and all else as the pattern says. */
    public static AirInput asBuilt(Keywork keywork, Air air) {
        return of(keywork, air, HornShape.PATTERN);
    }

    /** As far as one horn is known, else as the pattern says. */
    public static AirInput of(Keywork keywork, Air air, HornShape shape) {
        List<BorePoint> bore = keywork.tube().bore().stream()
                .map(point -> new BorePoint(point.atMm() / 1e3, point.diameterMm() / 2e3))
                .toList();
        AirInput horn = new AirInput(
                air,
                bore,
                new Mouthpiece.Cavity(keywork.tube().mouthpieceVolumeMm3() * 1e-9),
                new Bell(End.UNFLANGED, shape.bellMm() / 1e3),
                keywork.cups().stream().map(cup -> hole(keywork, cup, shape)).toList(),
                keywork.fingerings().stream().map(f -> fingering(keywork, f)).toList(),
                List.of(),
                true,
                false,
                3,
                false,
                null);
        BoreFit fit = shape.fit();
        return fit == null ? horn : fit.on(horn);
    }

    private static Hole hole(Keywork keywork, Cup cup, HornShape shape) {
        ToneHole hole = keywork.holeOf(cup);
        double height = shape.frontMm(cup) * shape.centrePerFront(cup, hole);
        Pad pad = new Pad(cup.pad().diameterMm() / 2e3, height / 1e3, cup.seatDepthMm() / 1e3);
        return new Hole(
                hole.at().atMm() / 1e3, shape.holeMm(hole) / 2e3, hole.chimneyMm() / 1e3, hole.rimWallMm() / 1e3, pad);
    }

    private static AirInput.Fingering fingering(Keywork keywork, Fingering fingering) {
        List<String> holes = keywork.cups().stream().map(Cup::hole).toList();
        return new AirInput.Fingering(
                fingering.open().stream().map(holes::indexOf).toList(), fingering.peak());
    }
}
