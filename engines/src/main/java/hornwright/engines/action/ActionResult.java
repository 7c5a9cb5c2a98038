package hornwright.engines.action;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a key does when it is let go; times from release.
 *
 * @param inertia kg m²
 * @param opening first touch of the stop, s; null if it never gets there
 * @param impactSpeed of the stop point then, m/s
 * @param rebounds over a hundredth of a millimetre at the cup; the first hundred if it swings for ever
 * @param settled last time the cup is further than 2 % of its travel from its rest, s; null if it
 *     swings for ever or its figures are beyond reckoning
 * @param touchForce that starts the key from open rest towards closed, at closed torque, N; null without a touch
 * @param bounces whether the first rebound reaches a tenth of a millimetre
 */
public record ActionResult(
        double inertia,
        @Nullable Double opening,
        @Nullable Double impactSpeed,
        List<Rebound> rebounds,
        @Nullable Double settled,
        @Nullable Double touchForce,
        boolean bounces) {
    public ActionResult {
        rebounds = List.copyOf(rebounds);
    }

    /** How far the cup comes back from where the stop touched (m), and when (s). */
    public record Rebound(double height, double at) {}
}
