package hornwright.desk.drawing;

/** The shapes a drawing is made of. */
sealed interface Outline {
    record Circle(Spot centre, double radius) implements Outline {}

    /** A rectangle with rounded corners, turned about its middle. */
    record Slab(Spot centre, double width, double height, double corner, double turnDeg) implements Outline {
        private String rect() {
            String turn =
                    turnDeg == 0 ? "" : " transform=\"rotate(%s %s)\"".formatted(Text.n(turnDeg), Text.at(centre));
            return "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" rx=\"%s\"%s"
                    .formatted(
                            Text.n(centre.x() - width / 2),
                            Text.n(centre.y() - height / 2),
                            Text.n(width),
                            Text.n(height),
                            Text.n(corner),
                            turn);
        }
    }

    /** Anything else, in the words of SVG. */
    record Path(String d) implements Outline {}

    /** The element without its closing, so that attributes may follow. */
    default String opening() {
        return switch (this) {
            case Circle(Spot c, double r) ->
                "<circle cx=\"%s\" cy=\"%s\" r=\"%s\"".formatted(Text.n(c.x()), Text.n(c.y()), Text.n(r));
            case Slab slab -> slab.rect();
            case Path(String d) -> "<path d=\"" + d + "\"";
        };
    }
}
