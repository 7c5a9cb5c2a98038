package hornwright.bench.horn;

import java.util.List;

/**
 * The tube itself: bore from the small end, its pieces, its wall and the volume that stands for mouthpiece and
 * reed.
 */
public record Tube(double wallMm, double mouthpieceVolumeMm3, List<BorePoint> bore, List<TubePart> parts) {
    public Tube {
        bore = List.copyOf(bore);
        parts = List.copyOf(parts);
    }

    public double lengthMm() {
        return bore.getLast().atMm();
    }

    /** Inside diameter at a spot; beyond the ends the end diameter. */
    public double diameterMm(double atMm) {
        BorePoint before = bore.getFirst();
        for (BorePoint point : bore) {
            if (point.atMm() >= atMm) {
                double run = point.atMm() - before.atMm();
                double share = run > 0 ? (atMm - before.atMm()) / run : 0;
                return before.diameterMm() + Math.max(0, share) * (point.diameterMm() - before.diameterMm());
            }
            before = point;
        }
        return before.diameterMm();
    }

    public HornPart partAt(double atMm) {
        return parts.stream()
                .filter(p -> atMm <= p.toMm())
                .findFirst()
                .orElse(parts.getLast())
                .part();
    }
}
