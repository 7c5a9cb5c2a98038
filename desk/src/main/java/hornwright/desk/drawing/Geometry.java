package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
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

    double rodAngle(Rod rod) {
        return wrapping.rod(rod.id());
    }

    /** A spot of the tube near the rod of a key. */
    Spot byKey(Key key, Position at) {
        return sheet.spot(at.atMm(), wrapping.byKey(key, at.angleDeg()));
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

    double pearlRadius(Touch touch) {
        return touch.armMm() < 15 ? 6.4 : 8.6;
    }

    /**
     * Where a touch is drawn. A pearl that lies on a cup is moved off it, away from the hinge, so that the pad stays to
     * be seen; everything else stands where the data says.
     */
    Spot touch(Key key, Touch touch) {
        Spot spot = byKey(key, touch.at());
        if (touch.kind() != TouchKind.PEARL) {
            return spot;
        }
        Spot hinge = hinge(key, touch.at().atMm());
        double own = pearlRadius(touch);
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
