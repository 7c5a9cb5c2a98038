package hornwright.engines.air;

/** A complex number; time runs as e^{+jωt}. */
public record Complex(double re, double im) {
    static final Complex ZERO = new Complex(0, 0);
    static final Complex ONE = new Complex(1, 0);

    static Complex imaginary(double im) {
        return new Complex(0, im);
    }

    Complex plus(Complex o) {
        return new Complex(re + o.re, im + o.im);
    }

    Complex plus(double real) {
        return new Complex(re + real, im);
    }

    Complex minus(Complex o) {
        return new Complex(re - o.re, im - o.im);
    }

    Complex negated() {
        return new Complex(-re, -im);
    }

    Complex times(Complex o) {
        return new Complex(re * o.re - im * o.im, re * o.im + im * o.re);
    }

    Complex times(double factor) {
        return new Complex(re * factor, im * factor);
    }

    /** This times j. */
    Complex turned() {
        return new Complex(-im, re);
    }

    Complex over(Complex o) {
        double square = o.re * o.re + o.im * o.im;
        return new Complex((re * o.re + im * o.im) / square, (im * o.re - re * o.im) / square);
    }

    Complex inverse() {
        double square = squared();
        return new Complex(re / square, -im / square);
    }

    /** |z|². */
    double squared() {
        return re * re + im * im;
    }

    /** |z|. */
    public double magnitude() {
        return Math.hypot(re, im);
    }

    /** The root with a real part of zero or more. */
    Complex root() {
        double size = Math.sqrt(squared());
        double real = Math.sqrt(Math.max(0, (size + re) / 2));
        if (real == 0) {
            return new Complex(0, Math.sqrt(size));
        }
        return new Complex(real, im / (2 * real));
    }

    static Complex exp(Complex z) {
        double size = Math.exp(z.re);
        return new Complex(size * Math.cos(z.im), size * Math.sin(z.im));
    }
}
