package hornwright.desk.drawing;

import hornwright.desk.drawing.Mark.Shape;
import java.util.List;

/** The shapes keys are made of: tubes, arms, leaves, posts. */
final class Brass {
    private Brass() {}

    static Shape circle(Ink ink, Spot centre, double radius) {
        return new Shape(ink, new Outline.Circle(centre, radius));
    }

    static Shape slab(Ink ink, Spot centre, double width, double height, double corner, double turnDeg) {
        return new Shape(ink, new Outline.Slab(centre, width, height, corner, turnDeg));
    }

    static Shape path(Ink ink, String d) {
        return new Shape(ink, new Outline.Path(d));
    }

    static Shape line(Ink ink, List<Spot> spots) {
        StringBuilder d = new StringBuilder("M");
        for (int i = 0; i < spots.size(); i++) {
            d.append(i == 0 ? "" : "L").append(Text.at(spots.get(i)));
        }
        return path(ink, d.toString());
    }

    /** A straight tube between two spots. */
    static Shape tube(Ink ink, Spot from, Spot to, double width) {
        double a = from.bearing(to);
        double dx = Math.sin(a) * width / 2;
        double dy = -Math.cos(a) * width / 2;
        return path(
                ink,
                "M" + Text.at(from.plus(dx, dy)) + "L" + Text.at(to.plus(dx, dy)) + "L" + Text.at(to.plus(-dx, -dy))
                        + "L" + Text.at(from.plus(-dx, -dy)) + "Z");
    }

    /** A key arm: broad where it is soldered to the tube, waisted, slim and round where it ends. */
    static Shape arm(Spot from, Spot to, double broad, double slim, double bend) {
        double a = from.bearing(to);
        double s = Math.sin(a);
        double c = Math.cos(a);
        Spot middle = from.between(to, 0.5).plus(-s * bend, c * bend);
        double waist = (broad + slim) * 0.4;
        return path(
                Ink.ARM,
                "M" + side(from, s, c, broad) + "Q" + side(middle, s, c, waist) + " " + side(to, s, c, slim) + "A"
                        + Text.n(slim / 2) + " " + Text.n(slim / 2) + " 0 0 1 " + side(to, s, c, -slim) + "Q"
                        + side(middle, s, c, -waist) + " " + side(from, s, c, -broad) + "Z");
    }

    private static String side(Spot spot, double s, double c, double width) {
        return Text.at(spot.plus(s * width / 2, -c * width / 2));
    }

    /** A palm touch: a long leaf, fat towards the hand, with the light on it. */
    static List<Mark> leaf(Spot from, Spot to, double width) {
        double a = from.bearing(to);
        double length = from.distance(to);
        String edge = "M" + of(from, a, 0, -2) + "C" + of(from, a, length * 0.3, -2.5) + " "
                + of(from, a, length * 0.45, -width / 2) + " " + of(from, a, length * 0.78, -width / 2) + "C"
                + of(from, a, length * 1.06, -width / 2) + " " + of(from, a, length * 1.06, width / 2) + " "
                + of(from, a, length * 0.78, width / 2) + "C" + of(from, a, length * 0.45, width / 2) + " "
                + of(from, a, length * 0.3, 2.5) + " " + of(from, a, 0, 2) + "Z";
        String shine = "M" + of(from, a, length * 0.42, -width * 0.1) + "Q" + of(from, a, length * 0.7, -width * 0.3)
                + " " + of(from, a, length * 0.9, -width * 0.12);
        return List.of(path(Ink.TOUCH, edge), path(Ink.SHINE, shine));
    }

    /** The spot so far along and so far to the right of a direction. */
    private static String of(Spot from, double a, double along, double aside) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return Text.at(from.plus(c * along - s * aside, s * along + c * aside));
    }

    /** A brass ball with the slot of a screw. */
    static List<Mark> post(Spot at) {
        return List.of(circle(Ink.POST, at, 4.2), line(Ink.SLOT, List.of(at.plus(-2.2, -1.3), at.plus(2.2, 1.3))));
    }
}
