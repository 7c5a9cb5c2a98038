package hornwright.engines.spring;

import org.jspecify.annotations.Nullable;

/**
 * A bent spring.
 *
 * @param rate rise of force with deflection here, N/m
 * @param force at the tip, N
 * @param deflection of the tip, m
 * @param stress in the outermost fibre at the root, Pa
 * @param stressShare of the strength, if that is known
 * @param torque about the key axis, N m
 * @param forceAtPad N
 * @param linearErrorShare what proportional theory gets wrong at this deflection: its force over the true one, less 1;
 *     NaN where proportional theory bends the spring by its whole length or more
 */
public record SpringResult(
        double rate,
        double force,
        double deflection,
        double stress,
        @Nullable Double stressShare,
        double torque,
        double forceAtPad,
        double linearErrorShare) {}
