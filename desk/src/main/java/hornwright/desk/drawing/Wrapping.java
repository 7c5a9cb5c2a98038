package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rod;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Chooses for each angle the turn at which it is drawn, so that what belongs together stands together although the sheet
 * is cut along the back. A key that reaches round the back hangs over the cut instead of being torn in two.
 */
final class Wrapping {
    private static final double BY_THE_ROD_MM = 80;

    private final Keywork keywork;
    private final Map<String, Double> rods = new HashMap<>();

    Wrapping(Keywork keywork) {
        this.keywork = keywork;
        keywork.rods().forEach(rod -> rods.put(rod.id(), best(rod)));
    }

    private double best(Rod rod) {
        double best = rod.angleDeg();
        double least = Double.MAX_VALUE;
        for (double turn : List.of(0.0, 360.0, -360.0)) {
            double angle = rod.angleDeg() + turn;
            double cost = overhang(angle);
            for (Key key : keywork.keysOn(rod)) {
                cost += keywork.cupOf(key)
                        .map(cup -> 3 * overhang(near(angleOf(cup), angle)))
                        .orElse(0.0);
            }
            if (cost < least) {
                least = cost;
                best = angle;
            }
        }
        return best;
    }

    private static double overhang(double angle) {
        return Math.max(0, Math.abs(angle) - 180);
    }

    /** The angle moved by whole turns until it lies within half a turn of the other. */
    static double near(double angle, double other) {
        return angle + 360 * Math.rint((other - angle) / 360);
    }

    private double angleOf(Cup cup) {
        return keywork.holeOf(cup).at().angleDeg();
    }

    double rod(String id) {
        return rods.getOrDefault(id, 0.0);
    }

    double cup(Cup cup) {
        return near(angleOf(cup), rod(keywork.keyOf(cup).rod()));
    }

    /**
     * The angle of something that belongs to a key: by its rod, but as it stands when it lies so far along the tube that
     * nobody would look for it by the rod.
     */
    double byKey(Key key, Position at) {
        Rod rod = keywork.rodOf(key);
        double beyond = Math.max(rod.fromMm() - at.atMm(), at.atMm() - rod.toMm());
        return beyond > BY_THE_ROD_MM ? near(at.angleDeg(), 0) : near(at.angleDeg(), rod(rod.id()));
    }

    double place(Place place) {
        double angle = place.at().angleDeg();
        return switch (place.belongsTo()) {
            case Owner.OfCup cup -> near(angle, cup(keywork.cups().get(cup.id())));
            case Owner.OfHole hole ->
                keywork.cups().stream()
                        .filter(cup -> cup.hole().equals(hole.id()))
                        .findFirst()
                        .map(cup -> near(angle, cup(cup)))
                        .orElse(angle);
            case Owner.OfKey key -> byKey(keywork.keys().get(key.id()), place.at());
            case Owner.OfLink link ->
                byKey(keywork.keys().get(keywork.links().get(link.id()).driver()), place.at());
            case Owner.OfRod rod -> near(angle, rod(rod.id()));
            case Owner.OfPart part -> angle;
        };
    }
}
