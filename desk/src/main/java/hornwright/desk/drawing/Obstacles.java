package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
import java.util.ArrayList;
import java.util.List;

/** What stands on the sheet already, and how much it costs to lay words over it. */
final class Obstacles {
    /** Words never lie on this. */
    static final double NEVER = 1e6;

    private record Obstacle(Spot centre, double radius, double cost) {}

    private final Geometry geometry;
    private final List<Obstacle> all = new ArrayList<>();

    private Obstacles(Geometry geometry) {
        this.geometry = geometry;
    }

    static Obstacles of(Geometry geometry) {
        Obstacles obstacles = new Obstacles(geometry);
        geometry.keywork().cups().forEach(obstacles::cup);
        geometry.keywork().rods().forEach(obstacles::rod);
        geometry.keywork().keys().forEach(obstacles::touch);
        geometry.keywork().places().forEach(obstacles::slip);
        return obstacles;
    }

    double cost(Box box) {
        double cost = 0;
        for (Obstacle obstacle : all) {
            cost += box.meets(obstacle.centre(), obstacle.radius()) ? obstacle.cost() : 0;
        }
        return cost;
    }

    private void cup(Cup cup) {
        Spot at = geometry.cup(cup);
        double r = geometry.radius(cup);
        all.add(new Obstacle(at, r + 1, NEVER));
        Key key = geometry.keywork().keyOf(cup);
        strew(geometry.hinge(key, key.axis().atMm()), at, 4, 8);
        boolean guarded =
                geometry.keywork().placesOf(key).stream().anyMatch(place -> place.kind() == PlaceKind.KEY_GUARD);
        if (guarded) {
            all.add(new Obstacle(at, r + 9, 150));
        }
    }

    private void rod(Rod rod) {
        List<Spot> line = geometry.sheet().line(rod.fromMm(), rod.toMm(), geometry.rodAngle(rod));
        for (int i = 1; i < line.size(); i++) {
            strew(line.get(i - 1), line.get(i), 4, 9);
        }
    }

    private void touch(Key key) {
        Touch touch = key.touch();
        if (touch == null) {
            return;
        }
        Spot at = geometry.touch(key, touch);
        strew(geometry.hinge(key, touch.at().atMm()), at, 4, 6);
        if (touch.kind() == TouchKind.PEARL) {
            all.add(new Obstacle(at, 10, NEVER));
        } else {
            strew(at.plus(-9, 0), at.plus(9, 0), 9, 500);
        }
    }

    private void slip(Place place) {
        switch (place.kind()) {
            case FOOT, BUMPER, LINK, SLEEVE, SCREW_HEAD, FINISH, STAMP, BRACE ->
                all.add(new Obstacle(geometry.place(place), 6, 60));
            default -> {
                // the rest is fine enough for a name to stand near it, or lies within a cup
            }
        }
    }

    private void strew(Spot from, Spot to, double radius, double cost) {
        int steps = (int) Math.max(1, from.distance(to) / 5);
        for (int i = 0; i <= steps; i++) {
            all.add(new Obstacle(from.between(to, (double) i / steps), radius, cost));
        }
    }
}
