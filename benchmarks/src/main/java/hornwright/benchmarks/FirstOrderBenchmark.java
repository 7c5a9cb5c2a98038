package hornwright.benchmarks;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.Reasons;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * First-order uncertainty of a whole plan: as many reckoned numbers as the plan of the demo alto has, each the gap of a pad
 * from three lengths, with a because for every one; beside it the same derivatives in plain loops over arrays.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FirstOrderBenchmark {
    private static final double[] VALUES = {0.1, 28, 32.4};
    private static final double[] US = {0.02, 0.1, 0.5};

    int numbers;

    @Setup
    public void countAndAgree() {
        numbers =
                (int) Planner.plan(PlanInputs.of(
                                KeyworkFile.shipped("tarrant-loe-alto").orElseThrow()))
                        .becauses()
                        .byId()
                        .values()
                        .stream()
                        .filter(Because.Derived.class::isInstance)
                        .count();
        if (!(Math.abs(withBecauses() - plain()) < 1e-9 * numbers)) {
            throw new IllegalStateException("the two ways disagree: " + withBecauses() + ", " + plain());
        }
    }

    /** Sum of the uncertainties, so that nothing is left out. */
    @Benchmark
    public double withBecauses() {
        Reasons reasons = new Reasons();
        PlannedNumber[] inputs = new PlannedNumber[VALUES.length];
        for (int i = 0; i < VALUES.length; i++) {
            inputs[i] = reasons.leaf(new Because.Demo("length " + i, "a length"), VALUES[i], "mm", US[i]);
        }
        double sum = 0;
        for (int n = 0; n < numbers; n++) {
            sum += reasons.derive(
                            "gap " + n,
                            "proud x hole / (arm - hole / 2)",
                            "mm",
                            in -> in[0] * in[1] / (in[2] - in[1] / 2),
                            Because.Input.of("proud", inputs[0]),
                            Because.Input.of("hole", inputs[1]),
                            Because.Input.of("arm", inputs[2]))
                    .u();
        }
        return sum;
    }

    /** The same derivatives by hand, straight through. */
    @Benchmark
    public double plain() {
        double sum = 0;
        for (int n = 0; n < numbers; n++) {
            double square = 0;
            for (int i = 0; i < VALUES.length; i++) {
                double[] up = VALUES.clone();
                double[] down = VALUES.clone();
                up[i] += 0.1 * US[i];
                down[i] -= 0.1 * US[i];
                double share = (gap(up) - gap(down)) / 0.2;
                square += share * share;
            }
            sum += Math.sqrt(square);
        }
        return sum;
    }

    private static double gap(double[] in) {
        return in[0] * in[1] / (in[2] - in[1] / 2);
    }
}
