package hornwright.engines.spring;

/** What a spring looks like cut across; lengths in m. */
public sealed interface Section {

    /** A needle. */
    record Round(double diameter) implements Section {
        public Round {
            if (!(diameter > 0)) {
                throw new IllegalArgumentException("a needle has a diameter above zero");
            }
        }

        @Override
        public double secondMoment() {
            double square = diameter * diameter;
            return Math.PI * square * square / 64;
        }

        @Override
        public double outermost() {
            return diameter / 2;
        }

        @Override
        public Section asStiffIn(double modulus, double other) {
            return new Round(diameter * Math.pow(modulus / other, 0.25));
        }
    }

    /** A flat spring that bends across its thickness. */
    record Flat(double width, double thickness) implements Section {
        public Flat {
            if (!(width > 0) || !(thickness > 0)) {
                throw new IllegalArgumentException("a flat spring has a width and a thickness above zero");
            }
        }

        @Override
        public double secondMoment() {
            return width * thickness * thickness * thickness / 12;
        }

        @Override
        public double outermost() {
            return thickness / 2;
        }

        @Override
        public Section asStiffIn(double modulus, double other) {
            return new Flat(width, thickness * Math.cbrt(modulus / other));
        }
    }

    /** Second moment of area, m⁴. */
    double secondMoment();

    /** Distance of the most stretched fibre from the middle, m. */
    double outermost();

    /**
     * The section that feels the same in another metal: same product of modulus and second moment, so the same force at
     * every deflection of the same length, small or large. A flat spring keeps its width. Moduli in Pa.
     */
    Section asStiffIn(double modulus, double other);
}
