package hornwright.engines.air;

/** Two published sets of formulas for moist-free air at one atmosphere. */
public enum AirModel {
    /** Chaigne and Kergomard, Acoustics of Musical Instruments, 2016: the wider range of temperature. */
    CHAIGNE_KERGOMARD {
        @Override
        public Air at(double celsius) {
            double warmth = (celsius + ZERO_CELSIUS) / ZERO_CELSIUS;
            double viscosity = 1.708e-5 * (1 + 0.0029 * celsius);
            double conductivity = 5.77e-3 * (1 + 0.0033 * celsius);
            double heat = 240;
            return new Air(
                    331.45 * Math.sqrt(warmth),
                    1.2929 / warmth,
                    viscosity,
                    1.402,
                    Math.sqrt(viscosity * heat / conductivity));
        }
    },
    /** Keefe, 1984: good within about 10 K of 26.85 °C. */
    KEEFE {
        @Override
        public Air at(double celsius) {
            double over = celsius - 26.85;
            return new Air(
                    347.23 * (1 + 0.00166 * over),
                    1.1769 * (1 - 0.00335 * over),
                    1.846e-5 * (1 + 0.0025 * over),
                    1.4017 * (1 - 0.00002 * over),
                    0.8410 * (1 - 0.0002 * over));
        }
    };

    private static final double ZERO_CELSIUS = 273.15;

    /** Air at a temperature in °C. */
    public abstract Air at(double celsius);
}
