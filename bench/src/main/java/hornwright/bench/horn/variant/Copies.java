package hornwright.bench.horn.variant;

import hornwright.bench.horn.AsBuilt;
import hornwright.bench.horn.Axis;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.HingeTube;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Post;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Spring;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Touch;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Parts of a keywork with one thing changed. */
final class Copies {
    private Copies() {}

    static Link uncoupled(Link l) {
        return new Link(
                l.id(),
                l.kind(),
                l.driver(),
                l.driverArmMm(),
                l.follower(),
                l.followerArmMm(),
                l.spaceMm(),
                l.stiffnessNPerMm(),
                l.at(),
                l.layers(),
                null,
                l.screw());
    }

    static Link driver(Link l, String driver, double armMm) {
        return new Link(
                l.id(),
                l.kind(),
                driver,
                armMm,
                l.follower(),
                l.followerArmMm(),
                l.spaceMm(),
                l.stiffnessNPerMm(),
                l.at(),
                l.layers(),
                l.coupling(),
                l.screw());
    }

    static Link follower(Link l, String follower, double armMm) {
        return new Link(
                l.id(),
                l.kind(),
                l.driver(),
                l.driverArmMm(),
                follower,
                armMm,
                l.spaceMm(),
                l.stiffnessNPerMm(),
                l.at(),
                l.layers(),
                l.coupling(),
                l.screw());
    }

    static Rod order(Rod r, int order) {
        return rod(r, order, r.toMm(), r.angleDeg(), r.posts(), r.removeAfter());
    }

    static Rod removeAfter(Rod r, List<String> rods) {
        return rod(r, r.order(), r.toMm(), r.angleDeg(), r.posts(), rods);
    }

    static Rod rod(Rod r, int order, double toMm, double angleDeg, List<Post> posts, List<String> removeAfter) {
        return new Rod(
                r.id(),
                order,
                r.kind(),
                r.diameterMm(),
                r.direction(),
                r.fromMm(),
                toMm,
                angleDeg,
                r.heightAboveBodyMm(),
                posts,
                removeAfter);
    }

    static Fingering open(Fingering f, List<String> open) {
        return new Fingering(f.id(), f.written(), f.label(), f.register(), f.peak(), f.standard(), open);
    }

    static Place place(Place p, Position at, Owner owner) {
        return new Place(
                p.id(),
                p.kind(),
                p.name(),
                p.part(),
                at,
                owner,
                p.beneath(),
                p.asBuilt(),
                p.diameterMm(),
                p.lengthMm());
    }

    static Place thickness(Place p, String material, double thicknessMm) {
        AsBuilt was = p.asBuilt();
        return new Place(
                p.id(),
                p.kind(),
                p.name(),
                p.part(),
                p.at(),
                p.belongsTo(),
                p.beneath(),
                new AsBuilt(material, was.colour(), thicknessMm, was.finish()),
                p.diameterMm(),
                p.lengthMm());
    }

    static ToneHole at(ToneHole h, Position at) {
        return new ToneHole(
                h.id(), h.name(), at, h.diameterMm(), h.chimneyMm(), h.rimWallMm(), h.rim(), h.octaveVent());
    }

    /** The key moved as a whole; its touch stays under the finger. */
    static Key moved(Key k, UnaryOperator<Position> move) {
        Position axis = move.apply(new Position(k.axis().atMm(), k.axis().angleDeg()));
        Stop closing = k.closingStop();
        return new Key(
                k.id(),
                k.name(),
                k.group(),
                k.rest(),
                k.rod(),
                new Axis(
                        axis.atMm(),
                        axis.angleDeg(),
                        k.axis().heightAboveBodyMm(),
                        k.axis().direction()),
                at(k.stop(), move),
                closing == null ? null : at(closing, move),
                k.touch(),
                k.spring(),
                k.restRotationRad(),
                k.pressedRotationRad(),
                k.tube());
    }

    private static Stop at(Stop s, UnaryOperator<Position> move) {
        return stop(s, s.id(), s.armMm(), s.clearanceMm(), move.apply(s.at()), s.layers());
    }

    static Stop stop(Stop s, String id, double armMm, double clearanceMm, Position at, List<Layer> layers) {
        return new Stop(id, s.kind(), s.limits(), armMm, clearanceMm, s.stiffnessNPerMm(), at, layers);
    }

    static Key played(Key k, @Nullable Touch touch, Spring spring, HingeTube tube) {
        return new Key(
                k.id(),
                k.name(),
                k.group(),
                k.rest(),
                k.rod(),
                k.axis(),
                k.stop(),
                k.closingStop(),
                touch,
                spring,
                k.restRotationRad(),
                k.pressedRotationRad(),
                tube);
    }

    static Spring torque(Spring s, double torqueNmm) {
        return new Spring(
                s.place(),
                s.material(),
                s.section(),
                s.lengthMm(),
                s.cradleArmMm(),
                s.modulusGPa(),
                torqueNmm,
                s.rateNmmPerRad(),
                s.towards());
    }

    static Spring at(Spring s, String place) {
        return new Spring(
                place,
                s.material(),
                s.section(),
                s.lengthMm(),
                s.cradleArmMm(),
                s.modulusGPa(),
                s.torqueNmm(),
                s.rateNmmPerRad(),
                s.towards());
    }

    static Touch touch(Touch t, double armMm, boolean closes, double forceN) {
        return new Touch(t.kind(), t.at(), armMm, closes, forceN);
    }

    static Cup cup(Cup c, String id, String hole, String key, double armMm, double heightFrontMm) {
        return new Cup(
                id,
                hole,
                key,
                c.rest(),
                c.insideDiameterMm(),
                c.depthMm(),
                armMm,
                c.offsetMm(),
                c.massG(),
                c.pad(),
                c.centre(),
                c.adhesive(),
                c.seatDepthMm(),
                c.seatStiffnessMPa(),
                heightFrontMm);
    }

    /** Rounded as the keywork files are, so that a variant can be written and read back unchanged. */
    static double round(double value, int places) {
        double unit = Math.pow(10, places);
        return Math.round(value * unit) / unit;
    }

    /** The next hundredth of a newton up: the least force that surely does it. */
    static double force(double newton) {
        return Math.ceil(newton * 100 - 1e-9) / 100;
    }
}
