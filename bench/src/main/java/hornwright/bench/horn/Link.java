package hornwright.bench.horn;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A contact by which one key acts on another, with what lies between them.
 *
 * @param screw that sets it; null where only its material does
 */
public record Link(
        String id,
        LinkKind kind,
        String driver,
        double driverArmMm,
        String follower,
        double followerArmMm,
        double spaceMm,
        double stiffnessNPerMm,
        Position at,
        List<Layer> layers,
        @Nullable Coupling coupling,
        @Nullable AdjustingScrew screw)
        implements Identified {
    public Link {
        layers = List.copyOf(layers);
    }

    public double thicknessMm() {
        return layers.stream().mapToDouble(Layer::thicknessMm).sum();
    }

    /** Gap left when driver and follower stand at these rotations; negative means pressed into each other. */
    public double gapMm(double driverRad, double followerRad) {
        return spaceMm - thicknessMm() + driverArmMm * driverRad - kind.sense() * followerArmMm * followerRad;
    }
}
