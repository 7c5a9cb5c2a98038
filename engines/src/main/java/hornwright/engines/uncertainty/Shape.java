package hornwright.engines.uncertainty;

import java.util.SplittableRandom;

/** How a quantity may lie about its estimate; every shape is scaled to the standard uncertainty. */
public enum Shape {
    NORMAL {
        @Override
        void draw(SplittableRandom random, double dof, double[] standard) {
            for (int i = 0; i < standard.length; i++) {
                standard[i] = random.nextGaussian();
            }
        }
    },
    /** By R. W. Bailey, Polar generation of random variates with the t-distribution, 1994; then scaled to one. */
    STUDENT {
        @Override
        void draw(SplittableRandom random, double dof, double[] standard) {
            double toOne = Math.sqrt((dof - 2) / dof);
            for (int i = 0; i < standard.length; i++) {
                double x;
                double square;
                do {
                    x = random.nextDouble(-1, 1);
                    double y = random.nextDouble(-1, 1);
                    square = x * x + y * y;
                } while (square >= 1 || square == 0);
                standard[i] = toOne * x * Math.sqrt(dof * Math.expm1(-2 / dof * Math.log(square)) / square);
            }
        }
    },
    RECTANGULAR {
        @Override
        void draw(SplittableRandom random, double dof, double[] standard) {
            double half = Math.sqrt(3);
            for (int i = 0; i < standard.length; i++) {
                standard[i] = half * (2 * random.nextDouble() - 1);
            }
        }
    },
    TRIANGULAR {
        @Override
        void draw(SplittableRandom random, double dof, double[] standard) {
            double half = Math.sqrt(6);
            for (int i = 0; i < standard.length; i++) {
                standard[i] = half * (random.nextDouble() + random.nextDouble() - 1);
            }
        }
    };

    /** Fills with draws of mean 0 and standard deviation 1. */
    abstract void draw(SplittableRandom random, double dof, double[] standard);
}
