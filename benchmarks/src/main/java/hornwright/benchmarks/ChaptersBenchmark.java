package hornwright.benchmarks;

import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.BounceQuestion;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.plan.feel.FeelChapter;
import hornwright.bench.plan.feel.FeelQuestion;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.plan.seat.SeatChapter;
import hornwright.bench.plan.seat.SeatQuestion;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The chapters a page waits for, each for the whole demo alto and anew; the core plan beside them as the baseline. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ChaptersBenchmark {
    private final PlanInputs inputs =
            PlanInputs.of(KeyworkFile.shipped("tarrant-loe-alto").orElseThrow());
    private final Plan plan = Planner.plan(inputs);

    @Benchmark
    public Plan core() {
        return Planner.plan(inputs);
    }

    @Benchmark
    public FeelAnswer feel() {
        return FeelChapter.of(FeelQuestion.of(inputs));
    }

    @Benchmark
    public BounceChapter.Answer bounce() {
        return BounceChapter.of(BounceQuestion.of(inputs, plan));
    }

    @Benchmark
    public List<SeatAnswer> closing() {
        return SeatQuestion.all(inputs).stream()
                .flatMap(ask -> SeatChapter.of(ask).stream())
                .toList();
    }
}
