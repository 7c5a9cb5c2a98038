package hornwright.bench.horn;

/**
 * Where a finger presses. The force is the least that shuts every cup the touch closes or holds, or for an opening
 * touch the least that moves it, as the maker set it up.
 */
public record Touch(TouchKind kind, Position at, double armMm, boolean closes, double forceN) {
    /** Arm with sign as the linkage engine wants it: positive presses towards closed. */
    public double signedArmMm() {
        return closes ? armMm : -armMm;
    }
}
