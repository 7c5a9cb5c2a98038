package hornwright.benchmarks;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Integrity;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Kind;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Voice;
import hornwright.engines.belief.Belief;
import hornwright.engines.belief.BeliefAnswer;
import hornwright.engines.belief.BeliefQuestion;
import hornwright.engines.belief.LongBelief;
import hornwright.engines.belief.Sighting;
import hornwright.engines.belief.WorkshopAnswer;
import hornwright.engines.belief.WorkshopBelief;
import hornwright.engines.belief.WorkshopQuestion;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
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
 * The change-over engines: 5,000 positions exactly (aim 1 s), beside the plain recursion in logarithms, which finds the
 * evidence alone; 100,000 from a window around each of 2,000 serials (aim 10 s), and the same line as the archive asks it,
 * exactly; an as-built sheet of 200 places and 2,000 witnesses, 20 places looked at on each (aim 300 ms).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 4)
@Fork(1)
public class BeliefBenchmark {
    private static final List<String> MATERIALS = List.of("cork", "felt", "other");
    private static final double WINDOW_ERROR = 0.025;

    private final BeliefQuestion exact = question(5_000);
    private final BeliefQuestion longLine = question(100_000);
    private final Archive archive = archive(2_000, 200);

    static BeliefQuestion question(int positions) {
        Random random = new Random(positions);
        List<Sighting> line = new ArrayList<>();
        for (int i = 0; i < positions; i++) {
            String material = random.nextInt(25) == 0 ? "other" : i * 5L / positions % 2 == 0 ? "cork" : "felt";
            line.add(new Sighting(10_000 + 7L * i, material, random.nextBoolean() ? 1 : 0.75));
        }
        long step = 7L * positions / 2_000 + 1;
        List<Long> at =
                LongStream.range(0, 2_000).map(i -> 10_000 + i * step).boxed().toList();
        return new BeliefQuestion(line, MATERIALS, 0.05, 0.04, at);
    }

    private static Archive archive(int horns, int places) {
        Random random = new Random(3);
        List<Witness> witnesses = new ArrayList<>();
        List<Observation> looks = new ArrayList<>();
        for (int i = 0; i < horns; i++) {
            witnesses.add(new Witness(
                    "w" + i, 38_000 + 11L * i, Voice.ALTO, "Tarrant & Loe", "", null, Integrity.ORIGINAL, Map.of()));
            for (int p = 0; p < places; p++) {
                if (random.nextInt(10) == 0) {
                    looks.add(look(i, p, i * (2 + p % 4) / horns % 2 == 0 ? "cork" : "felt"));
                }
            }
        }
        return new Archive("Tarrant & Loe", witnesses, looks, List.of(), List.of(), Map.of());
    }

    private static Observation look(int horn, int place, String material) {
        return new Observation(
                "o" + horn + "." + place,
                "w" + horn,
                "p" + place,
                material,
                null,
                null,
                null,
                null,
                null,
                new Means.Examined(Method.SEEN, true),
                Hand.FIRST,
                Bearing.DIRECT,
                new Origin("h" + horn, Kind.OBJECT),
                Interest.NEUTRAL,
                "page " + horn,
                null);
    }

    @Setup
    public void theWindowSaysWhatTheExactSumSays() {
        List<BeliefAnswer.At> all = Belief.of(exact).at();
        List<BeliefAnswer.At> near = LongBelief.at(exact);
        for (int i = 0; i < all.size(); i++) {
            double difference = Math.abs(all.get(i).probabilities().getOrDefault("cork", 0.0)
                    - near.get(i).probabilities().getOrDefault("cork", 0.0));
            if (difference > WINDOW_ERROR) {
                throw new IllegalStateException("the window differs by " + difference);
            }
        }
    }

    @Setup
    public void thePlainWayFindsTheSameEvidence() {
        double plain = PlainSegments.logEvidence(exact);
        double found = Belief.of(exact).logEvidence();
        if (Math.abs(plain - found) > 1e-9 * Math.abs(plain)) {
            throw new IllegalStateException("evidence " + found + ", the plain way " + plain);
        }
    }

    @Benchmark
    public BeliefAnswer exact_5000_positions() {
        return Belief.of(exact);
    }

    @Benchmark
    public double plain_5000_positions_evidence_alone() {
        return PlainSegments.logEvidence(exact);
    }

    @Benchmark
    public WorkshopAnswer workshop_100000_positions() {
        return WorkshopBelief.of(workshop(longLine));
    }

    static WorkshopQuestion workshop(BeliefQuestion line) {
        return new WorkshopQuestion(line.observations(), line.materials(), Archive.ASSUMED, line.at());
    }

    @Benchmark
    public List<BeliefAnswer.At> window_100000_positions() {
        return LongBelief.at(longLine);
    }

    @Benchmark
    public Map<String, AsBuiltAt> sheet_200_places_2000_witnesses() {
        return archive.asBuilt(Voice.ALTO, 41_207);
    }
}
