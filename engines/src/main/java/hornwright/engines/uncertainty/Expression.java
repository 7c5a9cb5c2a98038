package hornwright.engines.uncertainty;

import java.util.Arrays;
import java.util.List;

/** A formula as a tree; computes many draws at once, or one with all its exact derivatives. */
sealed interface Expression {

    /** Values for {@code count} draws; {@code inputs[i]} holds the draws of input i. The array is the caller's to change. */
    double[] many(double[][] inputs, int count);

    Dual once(double[] inputs);

    record Constant(double value) implements Expression {
        @Override
        public double[] many(double[][] inputs, int count) {
            double[] all = new double[count];
            Arrays.fill(all, value);
            return all;
        }

        @Override
        public Dual once(double[] inputs) {
            return Dual.constant(value, inputs.length);
        }
    }

    record Input(int index) implements Expression {
        @Override
        public double[] many(double[][] inputs, int count) {
            return Arrays.copyOf(inputs[index], count);
        }

        @Override
        public Dual once(double[] inputs) {
            return Dual.variable(inputs[index], index, inputs.length);
        }
    }

    record Call(Function function, Expression of) implements Expression {
        @Override
        public double[] many(double[][] inputs, int count) {
            double[] all = of.many(inputs, count);
            for (int i = 0; i < count; i++) {
                all[i] = function.at(all[i]);
            }
            return all;
        }

        @Override
        public Dual once(double[] inputs) {
            Dual inner = of.once(inputs);
            return inner.through(function.at(inner.value()), function.slope(inner.value()));
        }
    }

    record Both(Operation operation, Expression left, Expression right) implements Expression {
        @Override
        public double[] many(double[][] inputs, int count) {
            double[] a = left.many(inputs, count);
            double[] b = right.many(inputs, count);
            for (int i = 0; i < count; i++) {
                a[i] = operation.at(a[i], b[i]);
            }
            return a;
        }

        @Override
        public Dual once(double[] inputs) {
            Dual a = left.once(inputs);
            Dual b = right.once(inputs);
            double x = a.value();
            double y = b.value();
            return a.with(b, operation.at(x, y), operation.slopeLeft(x, y), operation.slopeRight(x, y));
        }
    }

    /** The least or greatest of some, and other chains of one operation. */
    static Expression chain(Operation operation, List<Expression> parts) {
        return parts.stream().reduce((a, b) -> new Both(operation, a, b)).orElseThrow();
    }
}
