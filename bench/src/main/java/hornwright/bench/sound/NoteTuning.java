package hornwright.bench.sound;

/**
 * How far a note plays from its place.
 *
 * @param fingering id in the keywork
 * @param cents sharp positive
 * @param u one standard uncertainty, cents
 */
public record NoteTuning(String fingering, double cents, double u) {
    public NoteTuning {
        if (!Double.isFinite(cents) || !(u >= 0)) {
            throw new IllegalArgumentException("a note has cents and an uncertainty");
        }
    }
}
