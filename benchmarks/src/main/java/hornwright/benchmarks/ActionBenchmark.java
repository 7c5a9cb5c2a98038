package hornwright.benchmarks;

import hornwright.engines.action.Action;
import hornwright.engines.action.ActionInput;
import hornwright.engines.action.ActionResult;
import hornwright.engines.action.Bumper;
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

/** One key from release to quiet: some five rebounds and the settling. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ActionBenchmark {
    private final ActionInput key = new ActionInput(
            2.75e-6,
            0.012,
            0.02,
            0.005,
            0.025,
            0.012,
            0.03,
            Bumper.givingBack(200 * Math.pow(1e3, 1.5), 1.5, 0.6, 0.3),
            0.0005);
    private final PlainKey plain = new PlainKey(key);

    @Setup
    public void bothAgree() {
        double one = Action.reckon(key).rebounds().getFirst().height();
        double two = plain.firstRebound();
        if (!(Math.abs(one - two) < 1e-2 * one)) {
            throw new IllegalStateException("the two do not agree: " + one + " " + two);
        }
    }

    @Benchmark
    public ActionResult one_key_to_settling() {
        return Action.reckon(key);
    }

    /** Runs on to the same settling. */
    @Benchmark
    public double one_key_the_plain_way() {
        return plain.firstRebound();
    }
}
