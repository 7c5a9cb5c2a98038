package hornwright.engines.belief;

import java.util.function.BiConsumer;

/** The second method: every course a works may have taken, one after another, without a chain. */
final class EveryCourse {
    private final Laws laws;
    private final double[][] fits;
    private final double change;

    EveryCourse(Laws laws, Fit fit, double change) {
        this.laws = laws;
        this.change = change;
        fits = new double[fit.positions()][laws.ways()];
        for (int i = 0; i < fits.length; i++) {
            fit.ofWays(i, fits[i], 0);
        }
    }

    /** Shows each course with its weight. */
    void show(BiConsumer<int[], Double> visitor) {
        step(new int[fits.length], 0, 1, visitor);
    }

    private void step(int[] course, int at, double weight, BiConsumer<int[], Double> visitor) {
        if (at == course.length) {
            visitor.accept(course, weight);
            return;
        }
        for (int z = 0; z < laws.ways(); z++) {
            double drawn = at == 0 ? laws.prior[z] : change * laws.prior[z] + (z == course[at - 1] ? 1 - change : 0);
            course[at] = z;
            step(course, at + 1, weight * drawn * fits[at][z], visitor);
        }
    }
}
