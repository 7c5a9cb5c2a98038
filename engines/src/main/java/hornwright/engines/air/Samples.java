package hornwright.engines.air;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** Admittances of one fingering at the steps of the grid, taken as they are asked for. */
final class Samples {
    final double step;
    private final IntFunction<Complex> taken;
    private final List<Complex> values = new ArrayList<>();

    Samples(double step, IntFunction<Complex> taken) {
        this.step = step;
        this.taken = taken;
    }

    /** Admittance at {@code index} steps; index 1 is the first. */
    Complex at(int index) {
        while (values.size() < index) {
            values.add(taken.apply(values.size() + 1));
        }
        return values.get(index - 1);
    }

    double squared(int index) {
        return at(index).squared();
    }
}
