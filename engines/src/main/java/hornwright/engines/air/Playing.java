package hornwright.engines.air;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** Where a note is likely to sound: softly at a zero of its reactance, loudly where its harmonics balance. */
final class Playing {
    private static final int HARMONICS = 6;
    private static final double HIGHEST = 1500;

    /** Roots further off than this factor belong to another note. */
    private static final double REACH = 2;

    /** A change of sign that leaves more than this share is a pole, or a harmonic that drops out, and no root. */
    private static final double JUMP = 1e-3;

    private final Samples samples;
    private final Response response;

    Playing(Samples samples, Response response) {
        this.samples = samples;
        this.response = response;
    }

    /** Zero of Im Y nearest {@code peak}, Hz. */
    @Nullable
    Double soft(double peak) {
        return nearest(
                peak, i -> samples.at(i).im(), f -> response.admittance(f).im());
    }

    /** Zero nearest {@code peak} of the sum of Im Y(n f)/n over six harmonics below 1500 Hz. */
    @Nullable
    Double loud(double peak) {
        return nearest(peak, this::balanceAtStep, this::balance);
    }

    private double balanceAtStep(int index) {
        double sum = samples.at(index).im();
        for (int n = 2; n <= HARMONICS && n * index * samples.step <= HIGHEST; n++) {
            sum += samples.at(n * index).im() / n;
        }
        return sum;
    }

    private double balance(double f) {
        double sum = response.admittance(f).im();
        for (int n = 2; n <= HARMONICS && n * f <= HIGHEST; n++) {
            sum += response.admittance(n * f).im() / n;
        }
        return sum;
    }

    /** Walks both ways from the peak until no nearer root can come. */
    private @Nullable Double nearest(double peak, IntToDoubleFunction onGrid, DoubleUnaryOperator exact) {
        int start = Math.max(1, (int) (peak / samples.step));
        int last = (int) (peak * REACH / samples.step);
        Double best = null;
        for (int out = 0; start + out <= last; out++) {
            if (best != null && Math.abs(best - peak) < (out - 1) * samples.step) {
                return best;
            }
            best = nearer(peak, best, root(start + out, onGrid, exact));
            if (out > 0 && start - out >= 1) {
                best = nearer(peak, best, root(start - out, onGrid, exact));
            }
        }
        return best;
    }

    private @Nullable Double root(int index, IntToDoubleFunction onGrid, DoubleUnaryOperator exact) {
        double left = onGrid.applyAsDouble(index);
        double right = onGrid.applyAsDouble(index + 1);
        if (left == 0) {
            return index * samples.step;
        }
        if (!(left * right < 0)) {
            return null;
        }
        double at = Root.between(exact, index * samples.step, left, (index + 1) * samples.step, right, 1e-6);
        double least = JUMP * Math.max(Math.abs(left), Math.abs(right));
        return Math.abs(exact.applyAsDouble(at)) > least ? null : Double.valueOf(at);
    }

    private static @Nullable Double nearer(double peak, @Nullable Double best, @Nullable Double found) {
        if (found == null) {
            return best;
        }
        return best == null || Math.abs(found - peak) < Math.abs(best - peak) ? found : best;
    }
}
