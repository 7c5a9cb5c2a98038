package hornwright.benchmarks;

import hornwright.engines.belief.Belief;
import hornwright.engines.belief.BeliefAnswer;
import hornwright.engines.belief.BeliefQuestion;
import hornwright.engines.belief.LongBelief;
import hornwright.engines.belief.WorkshopAnswer;
import hornwright.engines.belief.WorkshopBelief;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How the engines grow with the number of horns, from 100 to 100,000; three materials, 2,000 serials asked about. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 3)
@Fork(1)
public class BeliefGrowthBenchmark {
    private static final int MOST_EXACT = 10_000;

    @Param({"100", "1000", "10000", "100000"})
    private int horns;

    private BeliefQuestion line = BeliefBenchmark.question(100);

    @Setup
    public void draw() {
        line = BeliefBenchmark.question(horns);
    }

    @Benchmark
    public WorkshopAnswer workshop() {
        return WorkshopBelief.of(BeliefBenchmark.workshop(line));
    }

    @Benchmark
    public List<BeliefAnswer.At> window() {
        return LongBelief.at(line);
    }

    /** Grows with the square; above ten thousand it is not asked. */
    @Benchmark
    public Object exact() {
        return horns > MOST_EXACT ? horns : Belief.of(line);
    }
}
