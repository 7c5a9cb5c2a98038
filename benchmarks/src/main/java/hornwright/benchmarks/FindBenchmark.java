package hornwright.benchmarks;

import hornwright.desk.find.Shelf;
import hornwright.desk.find.Shelves;
import hornwright.desk.find.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One question to 100,000 texts of 1,000 horns, from the index and by reading every text. Aim: 95 % under 100 ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FindBenchmark {
    private static final List<String> PLACES =
            List.of("G♯ foot", "low B♭ pad", "palm D bumper", "bis link", "neck cork", "E♭ guard felt");
    private static final List<String> MATERIALS =
            List.of("natural cork", "woven wool felt", "kid leather", "rubber", "brass");

    @Param({"felt", "g# foot", "packed nat", "zzz"})
    private String asked = "felt";

    private final List<List<Text>> horns = horns();
    private final List<Shelf> shelves = horns.stream().map(Shelf::of).toList();

    @Benchmark
    public Map<Text.Sort, Shelves.Found> from_the_index() {
        return Shelves.find(shelves, asked, 12);
    }

    @Benchmark
    public long by_reading_every_text() {
        return horns.stream()
                .flatMap(List::stream)
                .filter(text -> (text.title() + " " + text.detail())
                        .toLowerCase(Locale.ROOT)
                        .contains(asked))
                .count();
    }

    private static List<List<Text>> horns() {
        Random random = new Random(7);
        List<List<Text>> horns = new ArrayList<>();
        for (int horn = 0; horn < 1000; horn++) {
            List<Text> texts = new ArrayList<>();
            for (int i = 0; i < 100; i++) {
                texts.add(new Text(
                        Text.Sort.FOUND,
                        PLACES.get(random.nextInt(PLACES.size())) + ", alto " + (30_000 + horn * 17),
                        MATERIALS.get(random.nextInt(MATERIALS.size())) + ", packed, word" + random.nextInt(5000),
                        "/horn/q-" + horn));
            }
            horns.add(texts);
        }
        return horns;
    }
}
