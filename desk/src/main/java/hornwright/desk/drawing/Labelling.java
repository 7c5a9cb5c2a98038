package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Finds a place for the name of every cup: beside it, clear of every other name, cup and touch, and of metal where that
 * can be had. The tightest cups choose first.
 */
final class Labelling {
    /** Width of a letter as a share of the type size: a wide letter of a semibold sans, so that no face spills over. */
    private static final double LETTER = 0.62;

    private final Geometry geometry;
    private final Obstacles obstacles;

    Labelling(Geometry geometry) {
        this.geometry = geometry;
        this.obstacles = Obstacles.of(geometry);
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
        @Nullable Label best = null;
        double least = Double.MAX_VALUE;
        for (double gap : new double[] {3, 7, 12, 18, 26, 36, 48, 64, 84, 110}) {
            for (int i = 0; i < 24; i++) {
                double bearing = i * Math.PI / 12;
                Spot centre = centre(at, r + gap, bearing, width, size, upright);
                Label label = new Label(cup.id(), text, centre, size, width, at.along(bearing, r), gap > 20);
                double cost =
                        gap * 2.2 + lean(bearing, upright) + doubt(cup, centre) + cost(box(label, upright), taken);
                if (cost < least) {
                    least = cost;
                    best = label;
                }
            }
        }
        return Objects.requireNonNull(best);
    }

    /** What it costs that another cup lies nearer to a name than its own does, so that it might be read as that one's. */
    private double doubt(Cup cup, Spot name) {
        double own = geometry.cup(cup).distance(name) - geometry.radius(cup);
        return geometry.keywork().cups().stream()
                .filter(other -> !other.id().equals(cup.id()))
                .mapToDouble(other -> geometry.cup(other).distance(name) - geometry.radius(other))
                .filter(distance -> distance < own + 6)
                .map(distance -> 9 * (own + 6 - distance))
                .sum();
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
            cost += roomy.meets(other) ? Obstacles.NEVER : 0;
        }
        cost += obstacles.cost(box);
        if (box.top() < 2 || box.bottom() > Sheet.HEIGHT - 2 || box.left() < 2 || box.right() > Sheet.WIDTH - 2) {
            cost += Obstacles.NEVER;
        }
        return cost;
    }
}
