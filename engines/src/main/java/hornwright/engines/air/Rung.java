package hornwright.engines.air;

import java.util.List;

/** One element between the mouthpiece and the bell. */
sealed interface Rung {
    /** A stretch of bore. */
    record Stretch(List<Bore.Slice> slices) implements Rung {
        Matrix matrix(Air air, double omega, boolean losses) {
            Matrix product = null;
            for (Bore.Slice slice : slices) {
                TubeWave wave = TubeWave.of(air, omega, slice.meanRadius(), losses);
                Matrix next = Matrix.cone(wave, slice.radius1(), slice.radius2(), slice.length());
                product = product == null ? next : product.times(next);
            }
            return product == null ? Matrix.UNIT : product;
        }
    }

    /** A tone hole, by its index in the input. */
    record Branch(int hole, HoleShape shape) implements Rung {
        Matrix matrix(Air air, double omega, boolean losses, boolean open) {
            return circuit(air, omega, losses, open).matrix();
        }

        HoleCircuit circuit(Air air, double omega, boolean losses, boolean open) {
            return open ? HoleCircuit.open(shape, air, omega, losses) : HoleCircuit.closed(shape, air, omega, losses);
        }
    }

    /** A round leak: a short tube with the air at both its ends. */
    record Pinhole(double radius, double depth) implements Rung {
        private static final double END = 0.82;

        Matrix matrix(Air air, double omega, boolean losses) {
            TubeWave wave = TubeWave.of(air, omega, radius, losses);
            Complex tube =
                    Matrix.cone(wave, radius, radius, Math.max(depth, 1e-9)).seen(Complex.ZERO);
            double k = omega / air.speed();
            return Matrix.shunt(tube.plus(HoleCircuit.inertance(2 * END * radius, k, air, radius)));
        }
    }
}
