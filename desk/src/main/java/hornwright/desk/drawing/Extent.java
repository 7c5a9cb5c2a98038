package hornwright.desk.drawing;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How much room marks take, from the corners of their shapes. */
final class Extent {
    private static final Pattern CORNER = Pattern.compile("(?<=[ML ])(-?[0-9.]+) (-?[0-9.]+)(?=[LQAZCM]|$)");

    private double left = Double.MAX_VALUE;
    private double top = Double.MAX_VALUE;
    private double right = -Double.MAX_VALUE;
    private double bottom = -Double.MAX_VALUE;

    private Extent() {}

    static Box of(List<Mark> marks) {
        Extent extent = new Extent();
        marks.forEach(extent::add);
        return new Box(extent.left, extent.top, extent.right, extent.bottom);
    }

    private void add(Mark mark) {
        switch (mark) {
            case Mark.Shape(Ink ink, Outline outline) -> add(outline);
            case Mark.Group(String name, List<Mark> marks) -> marks.forEach(this::add);
            case Mark.Upright(Spot pivot, List<Mark> marks) -> marks.forEach(this::add);
            case Mark.Handle handle -> handle.marks().forEach(this::add);
            case Mark.Words words -> add(words.at(), 0);
        }
    }

    private void add(Outline outline) {
        switch (outline) {
            case Outline.Circle(Spot centre, double radius) -> add(centre, radius);
            case Outline.Slab slab -> {
                double turn = Math.toRadians(slab.turnDeg());
                double x = Math.cos(turn) * slab.width() / 2;
                double y = Math.sin(turn) * slab.width() / 2;
                add(slab.centre().plus(x, y), slab.height() / 2);
                add(slab.centre().plus(-x, -y), slab.height() / 2);
            }
            case Outline.Path(String d) -> {
                Matcher corner = CORNER.matcher(d);
                while (corner.find()) {
                    add(new Spot(Double.parseDouble(corner.group(1)), Double.parseDouble(corner.group(2))), 1);
                }
            }
        }
    }

    private void add(Spot spot, double around) {
        left = Math.min(left, spot.x() - around);
        top = Math.min(top, spot.y() - around);
        right = Math.max(right, spot.x() + around);
        bottom = Math.max(bottom, spot.y() + around);
    }
}
