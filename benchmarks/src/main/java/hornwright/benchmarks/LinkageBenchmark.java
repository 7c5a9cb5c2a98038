package hornwright.benchmarks;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Keywork;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.linkage.Assembly;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Equilibrium;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.Press;
import hornwright.engines.linkage.Spread;
import hornwright.engines.linkage.Yield;
import java.util.List;
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

/** The whole demo alto: 34 keys, 84 contacts, seven sets. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LinkageBenchmark {
    private static final Spread SPREAD = new Spread(5e-5, 1e-4, 3e-5, 10_000, 1, 5e-6);

    private final Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final Action action = Action.asBuilt(alto);
    private final Mechanism mechanism = action.mechanism();
    private final Balance balance = Balance.of(mechanism);
    private final List<Press> press = List.of(Action.press(alto.keys().get("d"), 1));
    private final List<Landing> landings = action.landings(1);
    private final PlainBalance plain = new PlainBalance(mechanism, press);

    @Setup
    public void bothAgree() {
        double[] one = balance.under(press).rotation();
        double[] two = plain.rest();
        for (int i = 0; i < one.length; i++) {
            if (Math.abs(one[i] - two[i]) > 1e-8) {
                throw new IllegalStateException("the two do not agree on key " + i + ": " + one[i] + " " + two[i]);
            }
        }
    }

    @Benchmark
    public Equilibrium rest_of_the_alto() {
        return balance.under(press);
    }

    @Benchmark
    public double[] rest_of_the_alto_the_plain_way() {
        return plain.rest();
    }

    @Benchmark
    public Equilibrium rest_of_the_alto_from_its_keywork() {
        return Balance.of(Action.asBuilt(alto).mechanism()).under(press);
    }

    @Benchmark
    @Warmup(iterations = 2, time = 2)
    @Measurement(iterations = 5, time = 2)
    public Yield yield_of_ten_thousand_draws_of_seven_sets() {
        return Assembly.yieldOf(mechanism, landings, SPREAD);
    }
}
