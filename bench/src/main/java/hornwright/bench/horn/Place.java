package hornwright.bench.horn;

import org.jspecify.annotations.Nullable;

/**
 * One spot that carries a material or a look and so can be found, judged and renewed. Beneath names the place this
 * one lies under, as the adhesive under a cork; diameter and length are 0 where they do not apply.
 */
public record Place(
        String id,
        PlaceKind kind,
        TradeName name,
        HornPart part,
        Position at,
        Owner belongsTo,
        @Nullable String beneath,
        AsBuilt asBuilt,
        double diameterMm,
        double lengthMm)
        implements Identified {
    /** The place in words: "G♯ foot". */
    public String display() {
        return name.display();
    }
}
