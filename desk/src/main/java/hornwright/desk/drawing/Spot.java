package hornwright.desk.drawing;

/** A point of a drawing in units, x to the right and y down. */
public record Spot(double x, double y) {
    Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    double distance(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The point a share of the way to another. */
    Spot between(Spot other, double share) {
        return new Spot(x + share * (other.x - x), y + share * (other.y - y));
    }

    /** Direction to another point in radians, clockwise from the right. */
    double bearing(Spot other) {
        return Math.atan2(other.y - y, other.x - x);
    }

    /** The point so far away in that direction. */
    Spot along(double bearing, double distance) {
        return new Spot(x + Math.cos(bearing) * distance, y + Math.sin(bearing) * distance);
    }
}
