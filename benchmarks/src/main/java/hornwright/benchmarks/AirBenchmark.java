package hornwright.benchmarks;

import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.HornAir;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirModel;
import hornwright.engines.air.AirResult;
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

/** The alto, all its fingerings to three resonances, and what every pad does to them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AirBenchmark {
    private final AirInput peaks = horn(false);
    private final AirInput sensitivities = horn(true);
    private final PlainAir plain = new PlainAir(peaks);

    private static AirInput horn(boolean sensitivity) {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        AirInput in = HornAir.asBuilt(keywork, AirModel.CHAIGNE_KERGOMARD.at(26.85));
        return new AirInput(
                in.air(),
                in.bore(),
                in.mouthpiece(),
                in.bell(),
                in.holes(),
                in.fingerings(),
                in.leaks(),
                true,
                false,
                3,
                sensitivity,
                null);
    }

    /** The plain way reads its peaks off a grid of half a hertz. */
    @Setup
    public void bothAgree() {
        double[] rough = plain.lowest();
        AirResult fine = AirColumn.reckon(peaks);
        for (int i = 0; i < rough.length; i++) {
            double frequency = fine.fingerings().get(i).peaks().getFirst().frequency();
            if (!(Math.abs(frequency - rough[i]) < PlainAir.STEP)) {
                throw new IllegalStateException("the two do not agree: " + frequency + " " + rough[i]);
            }
        }
    }

    @Benchmark
    public AirResult all_fingerings_to_three_peaks() {
        return AirColumn.reckon(peaks);
    }

    @Benchmark
    public AirResult the_same_with_every_sensitivity() {
        return AirColumn.reckon(sensitivities);
    }

    @Benchmark
    public double[] lowest_peaks_only_the_plain_way() {
        return plain.lowest();
    }
}
