package hornwright.bench.archive;

import org.jspecify.annotations.Nullable;

/**
 * One item for or against a claim, in five short choices and what is needed to find it again.
 *
 * @param means what stands behind it; its kind is that of the origin
 * @param serials the serial numbers the item speaks of; wider than the claim is imprecise
 * @param citation where it can be found again; without one an item has no strength
 * @param file hash of the photograph or scan, if there is one
 * @param search where one looked; needed for negative bearing
 */
public record Evidence(
        String id,
        Means means,
        Hand hand,
        Bearing bearing,
        Stance stance,
        Origin origin,
        Interest interest,
        Integrity integrity,
        SerialRange serials,
        @Nullable String citation,
        @Nullable String file,
        @Nullable SearchLog search) {
    public Evidence {
        if (means.kind() != origin.kind()) {
            throw new IllegalArgumentException("the kind belongs to the origin: " + origin.id() + " is "
                    + origin.kind().word() + ", not " + means.kind().word());
        }
    }

    public Kind kind() {
        return origin.kind();
    }

    /** The same item, read as speaking against a claim. */
    Evidence against() {
        return new Evidence(
                id,
                means,
                hand,
                bearing,
                Stance.CONTRADICTS,
                origin,
                interest,
                integrity,
                serials,
                citation,
                file,
                search);
    }
}
