package hornwright.desk.virtual;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import java.util.List;

/**
 * The truth of one cup, its hole and the stop of its key, mm and rad; nobody on the bench sees it.
 *
 * @param rimGap cup rim to hole rim when a pad of even film lands level
 * @param sideTilt of the cup across the hinge line
 * @param rim waves of the hole's rim and of the pad's face together
 * @param stiffness of the pad's seat, MPa
 * @param play left at the hinge, across the diameter
 * @param closingN force at the pad's centre at the lightest closing
 * @param edge of the hole at its front, and foot: both as they turn
 * @param clearance of the stop, metal to metal, key closed
 * @param oldPad how much prouder the old pad stands than a new one
 */
record VirtualCup(
        Cup cup,
        Key key,
        double hole,
        double arm,
        double insideAlong,
        double insideAcross,
        double depth,
        double rimGap,
        double seat,
        double sideTilt,
        Rim rim,
        double stiffness,
        double play,
        double closingN,
        Turning edge,
        Turning centre,
        Turning foot,
        double clearance,
        List<VirtualLayer> layers,
        double oldPad,
        double factoryFront) {

    /** The same over a rim without waves, under a pad without any. */
    VirtualCup level() {
        return with(Rim.of(), stiffness);
    }

    /** The same with a pad that is so many times as stiff. */
    VirtualCup stiffer(double times) {
        return with(rim, times * stiffness);
    }

    private VirtualCup with(Rim otherRim, double otherStiffness) {
        return new VirtualCup(
                cup,
                key,
                hole,
                arm,
                insideAlong,
                insideAcross,
                depth,
                rimGap,
                seat,
                sideTilt,
                otherRim,
                otherStiffness,
                play,
                closingN,
                edge,
                centre,
                foot,
                clearance,
                layers,
                oldPad,
                factoryFront);
    }

    double radius() {
        return hole / 2;
    }

    double inside() {
        return (insideAlong + insideAcross) / 2;
    }

    double floorToRim() {
        return depth + rimGap;
    }

    /** What pad and film share. */
    double room() {
        return floorToRim() + seat;
    }

    /** Front height with so much material at the stop and the pad where it should be. */
    double front(double material) {
        return edge.lift(foot.rotation(clearance - material));
    }

    /** Material at the stop that gives a front height. */
    double material(double front) {
        return clearance - foot.lift(edge.rotation(front));
    }

    double now() {
        return layers.stream().mapToDouble(VirtualLayer::now).sum();
    }

    /** What a wedge meets as the horn came in: the old pad hangs lower by what it stands prouder. */
    double frontAsFound() {
        return front(now()) - oldPad;
    }
}
