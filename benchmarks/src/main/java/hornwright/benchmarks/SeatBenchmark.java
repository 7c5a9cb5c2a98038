package hornwright.benchmarks;

import hornwright.engines.seat.PadStiffness;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Seat;
import hornwright.engines.seat.SeatInput;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult;
import hornwright.engines.seat.SeatResult.Position.Turned;
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

/** One pad over a rim with a second and a third wave: rest, gaps, leak, sealing torque. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SeatBenchmark {
    private final SeatInput pad = new SeatInput(
            0.009,
            new Harmonics(List.of(new Harmonic(2, 50e-6, 0), new Harmonic(3, 0, 10e-6))),
            Profile.FLAT,
            PadStiffness.even(2e5),
            new Hinged(0.03, 0, 0, 0, 0.01),
            1.2e-3,
            1000);
    private final PlainSeat plain = new PlainSeat(0.009, 0.03, 2e5, 0.01);

    /** The plain way is as good as its grid. */
    @Setup
    public void bothAgree() {
        double one = Seat.reckon(pad).position() instanceof Turned turned ? turned.rotation() : Double.NaN;
        double two = plain.rotation();
        if (!(Math.abs(one - two) < 1e-4 * one)) {
            throw new IllegalStateException("the two do not agree: " + one + " " + two);
        }
    }

    @Benchmark
    public SeatResult one_pad() {
        return Seat.reckon(pad);
    }

    @Benchmark
    public double rest_of_one_pad_the_plain_way() {
        return plain.rotation();
    }
}
