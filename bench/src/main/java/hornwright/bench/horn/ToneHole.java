package hornwright.bench.horn;

/**
 * A hole in the tube with the chimney and rim its pad lands on.
 */
public record ToneHole(
        String id,
        TradeName name,
        Position at,
        double diameterMm,
        double chimneyMm,
        double rimWallMm,
        RimKind rim,
        boolean octaveVent)
        implements Identified {
    public double radiusMm() {
        return diameterMm / 2;
    }
}
