package hornwright.engines.air;

/**
 * [p1; U1] = M [p2; U2] from the mouthpiece side to the bell side; its determinant is 1.
 *
 * @param a no unit
 * @param b Pa s/m³
 * @param c m³/(Pa s)
 * @param d no unit
 */
record Matrix(Complex a, Complex b, Complex c, Complex d) {
    static final Matrix UNIT = new Matrix(Complex.ONE, Complex.ZERO, Complex.ZERO, Complex.ONE);

    /** A straight cone (or cylinder) with the losses of its mean radius. */
    static Matrix cone(TubeWave wave, double radius1, double radius2, double length) {
        Complex k = wave.propagation().turned().negated();
        Complex turn = k.times(length);
        double grow = Math.exp(turn.im());
        double cosh = (grow + 1 / grow) / 2;
        double sinh = (grow - 1 / grow) / 2;
        double sine = Math.sin(turn.re());
        double cosine = Math.cos(turn.re());
        Complex sin = new Complex(sine * cosh, cosine * sinh);
        Complex cos = new Complex(cosine * cosh, -sine * sinh);
        double taper = (radius2 - radius1) / length;
        double apex1 = taper / radius1;
        double apex2 = taper / radius2;
        double area = Math.PI * radius1 * radius2;
        Complex lean = sin.over(k).times(apex1);
        Complex a = cos.times(radius2 / radius1).minus(lean);
        Complex b = sin.turned().times(wave.specific()).times(1 / area);
        Complex bend =
                sin.turned().times(k.times(k).inverse().times(apex1 * apex2).plus(1));
        Complex step = cos.over(k).turned().times(apex2 - apex1);
        Complex c = bend.plus(step).over(wave.specific()).times(area);
        Complex d = cos.plus(lean).times(radius1 / radius2);
        return new Matrix(a, b, c, d);
    }

    static Matrix shunt(Complex impedance) {
        return new Matrix(Complex.ONE, Complex.ZERO, impedance.inverse(), Complex.ONE);
    }

    static Matrix series(Complex impedance) {
        return new Matrix(Complex.ONE, impedance, Complex.ZERO, Complex.ONE);
    }

    Matrix times(Matrix o) {
        return new Matrix(
                a.times(o.a).plus(b.times(o.c)),
                a.times(o.b).plus(b.times(o.d)),
                c.times(o.a).plus(d.times(o.c)),
                c.times(o.b).plus(d.times(o.d)));
    }

    /** Impedance at the near side with {@code load} at the far side. */
    Complex seen(Complex load) {
        return a.times(load).plus(b).over(c.times(load).plus(d));
    }

    Complex determinant() {
        return a.times(d).minus(b.times(c));
    }

    void write(double[] into, int at) {
        into[at] = a.re();
        into[at + 1] = a.im();
        into[at + 2] = b.re();
        into[at + 3] = b.im();
        into[at + 4] = c.re();
        into[at + 5] = c.im();
        into[at + 6] = d.re();
        into[at + 7] = d.im();
    }
}
