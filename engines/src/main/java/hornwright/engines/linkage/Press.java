package hornwright.engines.linkage;

/**
 * A finger on a key.
 *
 * @param key id
 * @param force N
 * @param arm m, positive presses towards closed, negative opens
 */
public record Press(String key, double force, double arm) {
    /** Torque on the key, positive opening, N m. */
    double opening() {
        return -force * arm;
    }
}
