package hornwright.engines.air;

/**
 * A tone hole as a T: half the series part, the branch, half the series part, at the centre of the hole.
 *
 * <p>Lengths after Lefebvre and Scavone, JASA 131, 2012 and Nederveen, Jansen and van Hassel, Acustica 84, 1998; the
 * open hole's inner length without its factor in ka.
 *
 * @param half half the series impedance, Pa s/m³
 * @param branch impedance from the bore to the outside, Pa s/m³
 * @param share flow through the mouth of the chimney over flow into the branch
 */
record HoleCircuit(Complex half, Complex branch, Complex share) {
    /** The hole closed by its pad. */
    static HoleCircuit closed(HoleShape hole, Air air, double omega, boolean losses) {
        double k = omega / air.speed();
        TubeWave wave = TubeWave.of(air, omega, hole.radius(), losses);
        Matrix chimney = Matrix.cone(wave, hole.radius(), hole.radius(), hole.closedLength());
        Complex inside = inertance(hole.inner(), k, air, hole.radius());
        Complex half = inertance(hole.closedSeries() / 2, k, air, hole.boreRadius());
        return new HoleCircuit(half, chimney.a().over(chimney.c()).plus(inside), Complex.ZERO);
    }

    /** The hole open, its pad (if any) above it. */
    static HoleCircuit open(HoleShape hole, Air air, double omega, boolean losses) {
        double k = omega / air.speed();
        Matrix chimney = chimney(hole, air, omega, losses);
        Complex outside = outside(hole, air, omega);
        Complex inside = inertance(hole.inner(), k, air, hole.radius());
        Complex half = inertance(hole.openSeries() / 2, k, air, hole.boreRadius());
        Complex share = chimney.c().times(outside).plus(chimney.d()).inverse();
        return new HoleCircuit(half, chimney.seen(outside).plus(inside), share);
    }

    static Matrix chimney(HoleShape hole, Air air, double omega, boolean losses) {
        TubeWave wave = TubeWave.of(air, omega, hole.radius(), losses);
        return Matrix.cone(wave, hole.radius(), hole.radius(), hole.openLength());
    }

    /** Radiation impedance at the mouth of an open hole, Pa s/m³. */
    static Complex outside(HoleShape hole, Air air, double omega) {
        double k = omega / air.speed();
        double area = Math.PI * hole.radius() * hole.radius();
        double loss = k * hole.radius() * k * hole.radius() / 4;
        return new Complex(loss, k * hole.outer()).times(air.impedance() / area);
    }

    /** jωρℓ/S of a tube of this radius. */
    static Complex inertance(double length, double k, Air air, double radius) {
        return Complex.imaginary(k * length * air.impedance() / (Math.PI * radius * radius));
    }

    Matrix matrix() {
        Complex slope = half.over(branch);
        Complex a = slope.plus(1);
        return new Matrix(a, half.times(slope.plus(2)), branch.inverse(), a);
    }
}
