package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Touch;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where the parts of a keywork stand on its sheet. Everything hangs on the cups, which stand where the data says. */
final class Geometry {
    private final Keywork keywork;
    private final Sheet sheet;
    private final Wrapping wrapping;

    Geometry(Keywork keywork) {
        this.keywork = keywork;
        this.sheet = Sheet.of(keywork.tube());
        this.wrapping = new Wrapping(keywork);
    }

    Keywork keywork() {
        return keywork;
    }

    Sheet sheet() {
        return sheet;
    }

    Spot cup(Cup cup) {
        return sheet.spot(keywork.holeOf(cup).at().atMm(), wrapping.cup(cup));
    }

    /** Radius of the cup, a little more than that of its pad. */
    double radius(Cup cup) {
        return Math.max(4.5, sheet.radius(cup.pad().diameterMm()) + 1);
    }

    /** Angle of a rod as drawn, moved by a whole turn where that keeps its keys together. */
    double rodAngle(Rod rod) {
        return wrapping.rod(rod.id());
    }

    /** A spot of the tube near the rod of a key. */
    Spot byKey(Key key, Position at) {
        return sheet.spot(at.atMm(), wrapping.byKey(key, at));
    }

    /** The spot of the hinge of a key nearest to a spot along the tube. */
    Spot hinge(Key key, double atMm) {
        Rod rod = keywork.rodOf(key);
        double at = Math.clamp(atMm, rod.fromMm(), rod.toMm());
        return sheet.spot(at, wrapping.rod(rod.id()));
    }

    Spot place(Place place) {
        return sheet.spot(place.at().atMm(), wrapping.place(place));
    }

    Optional<Cup> cupOf(Place place) {
        return switch (place.belongsTo()) {
            case Owner.OfCup cup -> keywork.cups().find(cup.id());
            case Owner.OfHole hole ->
                keywork.cups().stream().filter(c -> c.hole().equals(hole.id())).findFirst();
            case Owner.OfKey key -> keywork.cupOf(keywork.keys().get(key.id()));
            case Owner.OfLink link -> Optional.empty();
            case Owner.OfRod rod -> Optional.empty();
            case Owner.OfPart part -> Optional.empty();
        };
    }

    /** The cup that is drawn under a spot. */
    Optional<Cup> cupUnder(Spot spot) {
        return keywork.cups().stream()
                .filter(cup -> cup(cup).distance(spot) < radius(cup) + 8)
                .min(Comparator.comparingDouble(cup -> cup(cup).distance(spot)));
    }

    Optional<Key> keyOf(Place place) {
        return switch (place.belongsTo()) {
            case Owner.OfCup cup -> Optional.of(keywork.keyOf(keywork.cups().get(cup.id())));
            case Owner.OfKey key -> keywork.keys().find(key.id());
            case Owner.OfLink link ->
                keywork.keys().find(keywork.links().get(link.id()).driver());
            case Owner.OfRod rod ->
                keywork.keysOn(keywork.rods().get(rod.id())).stream().findFirst();
            case Owner.OfHole hole -> cupOf(place).map(keywork::keyOf);
            case Owner.OfPart part -> Optional.empty();
        };
    }

    double angle(Key key, Position at) {
        return wrapping.byKey(key, at);
    }

    double pearlRadius(Touch touch) {
        return touch.armMm() < 15 ? 6.4 : 8.6;
    }

    /**
     * Where a touch is drawn. One that lies on a cup is moved off it, away from the hinge, so that the pad stays to be
     * seen; a plate of the table that would lie on the slips of its own key is turned over its hinge. Everything else
     * stands where the data says.
     */
    Spot touch(Key key, Touch touch) {
        Spot spot = byKey(key, touch.at());
        return switch (touch.kind()) {
            case PEARL -> offCups(key, spot, pearlRadius(touch), touch);
            case ROLLER -> offCups(key, spot, 11, touch);
            case LEVER -> key.group() == KeyGroup.PALM ? spot : offCups(key, spot, 9, touch);
            case SPATULA -> overHinge(key, touch);
            case THUMB -> spot;
        };
    }

    private Spot overHinge(Key key, Touch touch) {
        Rod rod = keywork.rodOf(key);
        if (touch.at().atMm() < rod.fromMm() || touch.at().atMm() > rod.toMm()) {
            return byKey(key, touch.at());
        }
        double hinge = wrapping.rod(key.rod());
        double reach = wrapping.byKey(key, touch.at()) - hinge;
        return sheet.spot(touch.at().atMm(), hinge - reach);
    }

    private Spot offCups(Key key, Spot start, double own, Touch touch) {
        Spot hinge = hinge(key, touch.at().atMm());
        Spot spot = start;
        for (int round = 0; round < 4; round++) {
            Spot here = spot;
            Optional<Cup> under = keywork.cups().stream()
                    .filter(cup -> cup(cup).distance(here) < radius(cup) + own - 2)
                    .findFirst();
            if (under.isEmpty()) {
                return spot;
            }
            Spot middle = cup(under.get());
            double away = middle.distance(spot) < 8 ? hinge.bearing(middle) : middle.bearing(spot);
            spot = middle.along(away, radius(under.get()) + own - 1.5);
        }
        return spot;
    }

    /** The touches of a horn, so that plates may keep clear of each other. */
    List<Spot> touches() {
        return keywork.keys().stream()
                .filter(key -> key.touch() != null)
                .map(key -> touch(key, key.touch()))
                .toList();
    }
}
