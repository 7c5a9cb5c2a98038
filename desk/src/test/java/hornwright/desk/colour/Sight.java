package hornwright.desk.colour;

/**
 * How a screen's colour arrives in an eye: as it is, or without one kind of cone. The matrices act on linear sRGB. Source:
 * Machado, Oliveira, Fernandes, "A physiologically-based model for simulation of color vision deficiency" (2009), severity
 * 1.0; sRGB and its white: IEC 61966-2-1 (from memory).
 */
enum Sight {
    NORMAL(new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}),
    WITHOUT_LONG(new double[][] {
        {0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}
    }),
    WITHOUT_MIDDLE(new double[][] {
        {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
    }),
    WITHOUT_SHORT(new double[][] {
        {1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}
    });

    private static final double[][] TO_XYZ = {
        {0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}
    };
    private static final double[] WHITE = {0.95047, 1, 1.08883};

    private final double[][] matrix;

    Sight(double[][] matrix) {
        this.matrix = matrix;
    }

    /** @param hex #rrggbb */
    Lab sees(String hex) {
        double[] xyz = times(TO_XYZ, onScreen(times(matrix, linear(hex))));
        double x = root(xyz[0] / WHITE[0]);
        double y = root(xyz[1] / WHITE[1]);
        double z = root(xyz[2] / WHITE[2]);
        return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    double[][] matrix() {
        return matrix.clone();
    }

    static double[] linear(String hex) {
        double[] linear = new double[3];
        for (int at = 0; at < 3; at++) {
            double share = Integer.parseInt(hex.substring(1 + 2 * at, 3 + 2 * at), 16) / 255.0;
            linear[at] = share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
        }
        return linear;
    }

    private static double[] onScreen(double[] rgb) {
        double[] kept = new double[3];
        for (int at = 0; at < 3; at++) {
            kept[at] = Math.clamp(rgb[at], 0, 1);
        }
        return kept;
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] out = new double[3];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                out[row] += matrix[row][column] * vector[column];
            }
        }
        return out;
    }

    private static double root(double share) {
        return share > 216.0 / 24389 ? Math.cbrt(share) : (24389.0 / 27 * share + 16) / 116;
    }
}
