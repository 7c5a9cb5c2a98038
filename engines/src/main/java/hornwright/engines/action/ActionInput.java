package hornwright.engines.action;

import org.jspecify.annotations.Nullable;

/**
 * A key held closed and let go.
 *
 * @param inertia about its axis, kg m²
 * @param torque of the spring when closed, towards open, N m
 * @param rate by which the torque falls as the key opens, N m/rad
 * @param travel of the cup centre until the stop touches, m
 * @param cupArm axis to cup centre, m
 * @param stopArm axis to the point that meets the bumper, m
 * @param touchArm axis to the touch, m, if there is one
 * @param bumper what it meets
 * @param friction constant torque against motion, N m
 */
public record ActionInput(
        double inertia,
        double torque,
        double rate,
        double travel,
        double cupArm,
        double stopArm,
        @Nullable Double touchArm,
        Bumper bumper,
        double friction) {
    public ActionInput {
        if (!(inertia > 0) || !(travel > 0) || !(cupArm > 0) || !(stopArm > 0)) {
            throw new IllegalArgumentException("inertia, travel and arms are above zero");
        }
        if (!(torque >= 0) || !(rate >= 0) || !(friction >= 0)) {
            throw new IllegalArgumentException("torque, rate and friction are not negative");
        }
    }
}
