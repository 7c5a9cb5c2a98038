package hornwright.benchmarks;

import hornwright.engines.uncertainty.InputQuantity;
import hornwright.engines.uncertainty.Model;
import hornwright.engines.uncertainty.Shape;
import hornwright.engines.uncertainty.Uncertainty;
import hornwright.engines.uncertainty.UncertaintyAnswer;
import hornwright.engines.uncertainty.UncertaintyQuestion;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
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

/** A million draws of a mass weighed in air (JCGM 101, 9.3), sorted for their intervals. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class UncertaintyBenchmark {
    private static final int DRAWS = 1_000_000;
    private static final double KNOWN = Double.POSITIVE_INFINITY;

    private final List<InputQuantity> inputs = List.of(
            new InputQuantity("mRc", 100_000, 0.050, Shape.NORMAL, KNOWN),
            new InputQuantity("dmRc", 1.234, 0.020, Shape.NORMAL, KNOWN),
            new InputQuantity("ra", 1.2, 0.1 / Math.sqrt(3), Shape.RECTANGULAR, KNOWN),
            new InputQuantity("rW", 8000, 1000 / Math.sqrt(3), Shape.RECTANGULAR, KNOWN),
            new InputQuantity("rR", 8000, 50 / Math.sqrt(3), Shape.RECTANGULAR, KNOWN));
    private final Model model = Model.of(
            "(mRc + dmRc)*(1 + (ra - 1.2)*(1/rW - 1/rR)) - 100000",
            inputs.stream().map(InputQuantity::id).toList());
    private final UncertaintyQuestion question = new UncertaintyQuestion(inputs, model, DRAWS, 1, 0.95);

    @Setup
    public void bothAgree() {
        double one = Uncertainty.of(question).drawn().interval().low();
        double two = written_out_by_hand()[DRAWS / 40];
        if (!(Math.abs(one - two) < 2e-3)) {
            throw new IllegalStateException("the two do not agree: " + one + " " + two);
        }
    }

    @Benchmark
    public UncertaintyAnswer a_million_draws_of_a_typed_formula() {
        return Uncertainty.of(question);
    }

    /** The same formula compiled into this loop, with the plain generator. */
    @Benchmark
    public double[] written_out_by_hand() {
        Random random = new Random(1);
        double[] results = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double mass = 100_000 + 0.050 * random.nextGaussian() + 1.234 + 0.020 * random.nextGaussian();
            double air = 1.1 + 0.2 * random.nextDouble();
            double weight = 7000 + 2000 * random.nextDouble();
            double reference = 7950 + 100 * random.nextDouble();
            results[i] = mass * (1 + (air - 1.2) * (1 / weight - 1 / reference)) - 100_000;
        }
        Arrays.sort(results);
        return results;
    }
}
