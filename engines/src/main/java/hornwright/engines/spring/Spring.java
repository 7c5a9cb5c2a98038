package hornwright.engines.spring;

import hornwright.engines.spring.SpringInput.Bend;

/**
 * Force, rate, stress and torque of a needle or flat spring.
 *
 * <p>Euler and Bernoulli's beam: plane sections, no shear, elastic, straight when free, the root held fast and the load
 * keeping its direction. Relative error of the solution 1e-11; a real spring's modulus, diameter and free length are each
 * known to a few per cent at best.
 */
public final class Spring {
    private Spring() {}

    public static SpringResult reckon(SpringInput input) {
        return switch (input.model()) {
            case LARGE -> large(input);
            case LINEAR -> linear(input);
        };
    }

    private static SpringResult large(SpringInput input) {
        double unit = unit(input);
        Elastica beam = switch (input.bend()) {
            case Bend.To to -> Elastica.bentTo(to.deflection() / input.length());
            case Bend.Under under -> Elastica.under(under.force() / unit);
        };
        double force = beam.load() * unit;
        double deflection = beam.deflection() * input.length();
        double moment = force * beam.reach() * input.length();
        return result(input, beam.rate() * unit / input.length(), force, deflection, moment);
    }

    private static SpringResult linear(SpringInput input) {
        double rate = 3 * unit(input) / input.length();
        double force = switch (input.bend()) {
            case Bend.To to -> rate * to.deflection();
            case Bend.Under under -> under.force();
        };
        return result(input, rate, force, force / rate, force * input.length());
    }

    private static SpringResult result(
            SpringInput input, double rate, double force, double deflection, double rootMoment) {
        double stress =
                input.section().outermost() * rootMoment / input.section().secondMoment();
        double torque = force * input.cradleArm();
        Double strength = input.strength();
        return new SpringResult(
                rate,
                force,
                deflection,
                stress,
                strength == null ? null : Double.valueOf(stress / strength),
                torque,
                torque / input.padArm(),
                linearError(deflection / input.length()));
    }

    /** Depends on the share of the length alone: 3 δ/L over the true load, less 1. */
    private static double linearError(double share) {
        if (share == 0) {
            return 0;
        }
        return share < 1 ? 3 * share / Elastica.bentTo(share).load() - 1 : Double.NaN;
    }

    /** EI/L², N: the unit of force of this spring. */
    private static double unit(SpringInput input) {
        return input.modulus() * input.section().secondMoment() / (input.length() * input.length());
    }
}
