package hornwright.desk.drawing;

/** A rectangle on the drawing. */
record Box(double left, double top, double right, double bottom) {
    static Box about(Spot centre, double width, double height) {
        return new Box(
                centre.x() - width / 2, centre.y() - height / 2, centre.x() + width / 2, centre.y() + height / 2);
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean meets(Spot centre, double radius) {
        double dx = Math.max(0, Math.max(left - centre.x(), centre.x() - right));
        double dy = Math.max(0, Math.max(top - centre.y(), centre.y() - bottom));
        return Math.hypot(dx, dy) < radius;
    }
}
