package hornwright.bench.horn.variant;

import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Tube;

/** Where a hinge and a hole lie in space, for the arm of a key that is added. */
final class Shape {
    private Shape() {}

    /** From a rod that runs along the tube to the middle of a hole's rim, in mm. */
    static double armMm(Tube tube, Rod rod, ToneHole hole) {
        double bore = tube.diameterMm(hole.at().atMm()) / 2;
        double rim = bore + hole.chimneyMm();
        double hinge = bore + tube.wallMm() + rod.heightAboveBodyMm();
        double between = Math.toRadians(hole.at().angleDeg() - rod.angleDeg());
        return Copies.round(Math.sqrt(rim * rim + hinge * hinge - 2 * rim * hinge * Math.cos(between)), 1);
    }

    /** How far a key must turn for its cup to stand this high at the front edge, in radians. */
    static double openRad(double heightFrontMm, double armMm, ToneHole hole) {
        return Copies.round(heightFrontMm / (armMm + hole.radiusMm()), 6);
    }

    /** A spot moved along the tube and round it. */
    static Position shifted(Position at, double alongMm, double roundDeg) {
        double angle = at.angleDeg() + roundDeg;
        double wrapped = angle > 180 ? angle - 360 : angle < -180 ? angle + 360 : angle;
        return new Position(Copies.round(at.atMm() + alongMm, 1), Copies.round(wrapped, 1));
    }
}
