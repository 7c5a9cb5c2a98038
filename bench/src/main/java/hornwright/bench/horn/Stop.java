package hornwright.bench.horn;

import java.util.List;

/**
 * What a key comes to rest against, and the layers between. Clearance is metal to metal with the key closed, along
 * the arc of the arm.
 */
public record Stop(
        String id,
        StopKind kind,
        Limits limits,
        double armMm,
        double clearanceMm,
        double stiffnessNPerMm,
        Position at,
        List<Layer> layers)
        implements Identified {
    public Stop {
        layers = List.copyOf(layers);
    }

    public double thicknessMm() {
        return layers.stream().mapToDouble(Layer::thicknessMm).sum();
    }

    /** Gap left when the key stands at q radians. */
    public double gapMm(double rotationRad) {
        double turned = limits == Limits.OPENING ? -rotationRad : rotationRad;
        return clearanceMm - thicknessMm() + armMm * turned;
    }
}
