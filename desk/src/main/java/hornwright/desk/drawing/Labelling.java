package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Rod;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds a place for the name of every cup: beside it, clear of every other name, cup and touch, and of metal where that
 * can be had. The tightest cups choose first.
 */
final class Labelling {
    /** Width of a letter as a share of the type size: a wide letter of a semibold sans, so that no face spills over. */
    private static final double LETTER = 0.62;

    private static final double NEVER = 1e6;

    private record Obstacle(Spot centre, double radius, double cost) {}

    private final Geometry geometry;
    private final List<Obstacle> obstacles = new ArrayList<>();

    Labelling(Geometry geometry) {
        this.geometry = geometry;
        geometry.keywork().cups().forEach(cup -> {
            obstacles.add(new Obstacle(geometry.cup(cup), geometry.radius(cup) + 1, NEVER));
            Key key = geometry.keywork().keyOf(cup);
            strew(geometry.hinge(key, key.axis().atMm()), geometry.cup(cup), 4, 8);
        });
        geometry.keywork().rods().forEach(this::rod);
        geometry.keywork().keys().forEach(this::touch);
        geometry.keywork().places().forEach(this::slip);
    }

    private void rod(Rod rod) {
        List<Spot> line = geometry.sheet().line(rod.fromMm(), rod.toMm(), geometry.rodAngle(rod));
        for (int i = 1; i < line.size(); i++) {
            strew(line.get(i - 1), line.get(i), 4, 9);
        }
    }

    private void touch(Key key) {
        if (key.touch() != null) {
            Spot at = geometry.touch(key, key.touch());
            obstacles.add(new Obstacle(at, 11, 400));
            strew(geometry.hinge(key, key.touch().at().atMm()), at, 4, 6);
        }
    }

    private void slip(Place place) {
        switch (place.kind()) {
            case FOOT, BUMPER, GUARD, LINK, SLEEVE, GUARD_SCREW, SCREW_HEAD, FINISH, STAMP, BRACE ->
                obstacles.add(new Obstacle(geometry.place(place), 6, 60));
            default -> {
                // the rest is fine enough for a name to stand near it, or lies within a cup
            }
        }
    }

    private void strew(Spot from, Spot to, double radius, double cost) {
        int steps = (int) Math.max(1, from.distance(to) / 5);
        for (int i = 0; i <= steps; i++) {
            obstacles.add(new Obstacle(from.between(to, (double) i / steps), radius, cost));
        }
    }

    /**
     * @param size of the type in units
     * @param upright whether the sheet will stand on its end, the words turned back
     */
    List<Label> place(double size, boolean upright) {
        List<Cup> cups = geometry.keywork().cups().list().stream()
                .sorted(Comparator.comparingDouble(this::elbowRoom))
                .toList();
        List<Label> placed = new ArrayList<>();
        List<Box> taken = new ArrayList<>();
        for (Cup cup : cups) {
            Label label = best(cup, size, upright, taken);
            placed.add(label);
            taken.add(box(label, upright));
        }
        return placed;
    }

    static Box box(Label label, boolean upright) {
        double height = label.size() * 1.15;
        return upright
                ? Box.about(label.centre(), height, label.width())
                : Box.about(label.centre(), label.width(), height);
    }

    private double elbowRoom(Cup cup) {
        Spot at = geometry.cup(cup);
        return geometry.keywork().cups().stream()
                .filter(other -> !other.id().equals(cup.id()))
                .mapToDouble(other -> geometry.cup(other).distance(at) - geometry.radius(other))
                .min()
                .orElse(0);
    }

    private Label best(Cup cup, double size, boolean upright, List<Box> taken) {
        String text = geometry.keywork().nameOf(cup).display();
        double width = text.codePointCount(0, text.length()) * size * LETTER;
        Spot at = geometry.cup(cup);
        double r = geometry.radius(cup);
        Label best = null;
        double least = Double.MAX_VALUE;
        for (double gap : new double[] {3, 7, 12, 18, 26, 36, 48, 64, 84, 110}) {
            for (int i = 0; i < 24; i++) {
                double bearing = i * Math.PI / 12;
                Spot centre = centre(at, r + gap, bearing, width, size, upright);
                Label label = new Label(cup.id(), text, centre, size, width, at.along(bearing, r), gap > 20);
                double cost = gap * 2.2 + lean(bearing, upright) + cost(box(label, upright), taken);
                if (cost < least) {
                    least = cost;
                    best = label;
                }
            }
        }
        return java.util.Objects.requireNonNull(best);
    }

    /** Names sit best straight above or below their cup. */
    private static double lean(double bearing, boolean upright) {
        double across = upright ? Math.cos(bearing) : Math.sin(bearing);
        return 3 * (1 - Math.abs(across));
    }

    /** The centre of a box that touches a circle in that direction. */
    private static Spot centre(Spot at, double radius, double bearing, double width, double size, boolean upright) {
        double w = (upright ? size : width) / 2;
        double h = (upright ? width : size) / 2;
        return new Spot(at.x() + Math.cos(bearing) * (radius + w), at.y() + Math.sin(bearing) * (radius + h));
    }

    private double cost(Box box, List<Box> taken) {
        double cost = 0;
        Box roomy = new Box(box.left() - 2, box.top() - 1, box.right() + 2, box.bottom() + 1);
        for (Box other : taken) {
            cost += roomy.meets(other) ? NEVER : 0;
        }
        for (Obstacle obstacle : obstacles) {
            cost += box.meets(obstacle.centre(), obstacle.radius()) ? obstacle.cost() : 0;
        }
        if (box.top() < 2 || box.bottom() > Sheet.HEIGHT - 2 || box.left() < 2 || box.right() > Sheet.WIDTH - 2) {
            cost += NEVER;
        }
        return cost;
    }
}
