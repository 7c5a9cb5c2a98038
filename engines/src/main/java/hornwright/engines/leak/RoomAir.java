package hornwright.engines.leak;

/**
 * Dry air at one standard atmosphere.
 *
 * @param density kg/m³
 * @param viscosity Pa s
 */
public record RoomAir(double density, double viscosity) {
    /** One standard atmosphere, Pa. */
    public static final double PRESSURE = 101_325;

    /** Specific gas constant of dry air, J/(kg K): 8314.32 / 28.9644, US Standard Atmosphere 1976. */
    private static final double GAS_CONSTANT = 287.0529;

    public RoomAir {
        if (!(density > 0) || !(viscosity > 0)) {
            throw new IllegalArgumentException("air needs a density and a viscosity above zero");
        }
    }

    /** Air at this absolute temperature (K); viscosity by Sutherland's law as in US Standard Atmosphere 1976, ±0.1 %. */
    public static RoomAir at(double kelvin) {
        double viscosity = 1.458e-6 * kelvin * Math.sqrt(kelvin) / (kelvin + 110.4);
        return new RoomAir(PRESSURE / (GAS_CONSTANT * kelvin), viscosity);
    }
}
