package hornwright.bench.horn;

/**
 * A pad cup: which hole it covers, which key carries it, and the pad stack it was made for. Heights are those of
 * the open cup, for a cup that rests shut with its key fully open.
 */
public record Cup(
        String id,
        String hole,
        String key,
        Rest rest,
        double insideDiameterMm,
        double depthMm,
        double armMm,
        double offsetMm,
        double massG,
        PadBuild pad,
        PadCentre centre,
        PadAdhesive adhesive,
        double seatDepthMm,
        double seatStiffnessMPa,
        double heightFrontMm)
        implements Identified {
    /** Cup rim to hole rim with the key closed: adhesive + pad - cup depth - seat depth. */
    public double parallelGapMm() {
        return adhesive.thicknessMm() + pad.thicknessMm() - depthMm - seatDepthMm;
    }

    /** Height at the cup centre, by exact hinge geometry from the height at the front edge of the hole. */
    public double heightCentreMm(ToneHole hole) {
        return heightFrontMm * armMm / (armMm + hole.radiusMm());
    }

    /** The pad as one spring over the whole rim: pi x hole diameter x stiffness of the seat. */
    public double stiffnessNPerMm(ToneHole hole) {
        return Math.PI * hole.diameterMm() * seatStiffnessMPa;
    }
}
