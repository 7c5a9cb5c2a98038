package hornwright.engines.air;

/**
 * What a sound wave needs to know of the air.
 *
 * @param speed of sound in the open, m/s
 * @param density kg/m³
 * @param viscosity kg/(m s)
 * @param gamma ratio of specific heats
 * @param prandtlRoot square root of the Prandtl number
 */
public record Air(double speed, double density, double viscosity, double gamma, double prandtlRoot) {
    public Air {
        if (!(speed > 0 && density > 0 && viscosity > 0 && gamma > 1 && prandtlRoot > 0)) {
            throw new IllegalArgumentException("no such air: too cold or too hot for these formulas");
        }
    }

    /** ρc, Pa s/m. */
    double impedance() {
        return density * speed;
    }

    /** ρc², Pa. */
    double stiffness() {
        return density * speed * speed;
    }
}
