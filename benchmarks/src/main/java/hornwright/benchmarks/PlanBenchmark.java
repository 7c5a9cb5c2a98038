package hornwright.benchmarks;

import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.jobfile.JobFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
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

/** The core plan of the example alto, an hour of readings: anew, and after one cup depth more. Aim: 95 % under 50 ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlanBenchmark {
    private final PlanInputs job = example();
    private final Planner planner = new Planner();
    private int turn;

    @Setup
    public void bothAgree() {
        PlanInputs changed = deeper(0.1);
        planner.replan(job);
        if (!planner.replan(changed).equals(Planner.plan(changed))) {
            throw new IllegalStateException("the plan depends on what was planned before");
        }
    }

    @Benchmark
    public Plan anew() {
        return Planner.plan(job);
    }

    @Benchmark
    public Plan after_one_reading() {
        turn++;
        return planner.replan(deeper(0.001 * (turn % 100)));
    }

    /** The same job with another depth of the D cup. */
    private PlanInputs deeper(double by) {
        List<Reading> readings = job.readings().stream()
                .map(reading ->
                        reading.kind() == ReadingKind.CUP_DEPTH && reading.of().equals("cup.d")
                                ? Reading.of(reading.id(), reading.kind(), reading.of(), Observed.Amount.mm(3.0 + by))
                                : reading)
                .toList();
        return job.withReadings(readings);
    }

    private static PlanInputs example() {
        try (InputStream stream = JobFile.class.getResourceAsStream("/hornwright/examples/job.json")) {
            byte[] text = Objects.requireNonNull(stream).readAllBytes();
            return JobFile.read(new String(text, StandardCharsets.UTF_8)).inputs();
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
