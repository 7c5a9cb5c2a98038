package hornwright.engines.air;

import hornwright.engines.air.AirInput.BorePoint;
import java.util.ArrayList;
import java.util.List;

/** The bore as cones short enough that each has the losses of its mean radius. */
record Bore(List<BorePoint> points) {
    /** Slices are no longer than this, m: 0.01 cent on a resonance, 0.05 % on its height. */
    static final double LONGEST_SLICE = 0.02;

    /** A straight cone. */
    record Slice(double radius1, double radius2, double length) {
        double meanRadius() {
            return (radius1 + radius2) / 2;
        }
    }

    double from() {
        return points.getFirst().at();
    }

    double to() {
        return points.getLast().at();
    }

    double radiusAt(double at) {
        int right = 1;
        while (right < points.size() - 1 && points.get(right).at() < at) {
            right++;
        }
        BorePoint a = points.get(right - 1);
        BorePoint b = points.get(right);
        return a.radius() + (b.radius() - a.radius()) * (at - a.at()) / (b.at() - a.at());
    }

    /** The stretch between two positions, cut at every bore point. */
    List<Slice> slices(double from, double to) {
        List<Slice> all = new ArrayList<>();
        double start = from;
        for (BorePoint point : points) {
            if (point.at() > start && point.at() < to) {
                cut(all, start, point.at());
                start = point.at();
            }
        }
        if (to > start) {
            cut(all, start, to);
        }
        return all;
    }

    private void cut(List<Slice> all, double from, double to) {
        int parts = (int) Math.ceil((to - from) / LONGEST_SLICE - 1e-9);
        double length = (to - from) / parts;
        double near = radiusAt(from);
        double far = radiusAt(to);
        for (int i = 0; i < parts; i++) {
            double r1 = near + (far - near) * i / parts;
            double r2 = near + (far - near) * (i + 1) / parts;
            all.add(new Slice(r1, r2, length));
        }
    }
}
