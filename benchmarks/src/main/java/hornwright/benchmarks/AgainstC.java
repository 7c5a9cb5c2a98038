package hornwright.benchmarks;

import hornwright.engines.action.Bumper;
import hornwright.engines.leak.RoomAir;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;

/**
 * One pad, one key, the uncertainties of a plan and a million draws beside the same sums in plain C, and the draws in NumPy as
 * well, in one run: the values must agree first, then processor times are compared. Needs cc and python3 with numpy; the
 * folder of sources is the one argument.
 */
public final class AgainstC {
    private static final int WARM = 4;
    private static final int ROUNDS = 12;

    /** What a plain sum gave, and the processor seconds it took. */
    private record Told(double value, double seconds) {}

    private AgainstC() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path sources = Path.of(arguments.length == 0 ? "benchmarks/src/main" : arguments[0]);
        FirstOrderBenchmark firstOrder = new FirstOrderBenchmark();
        firstOrder.countAndAgree();
        Map<String, Told> plain = inC(sources.resolve("c/plain.c"), firstOrder.numbers);
        SeatBenchmark seat = new SeatBenchmark();
        ActionBenchmark action = new ActionBenchmark();
        UncertaintyBenchmark mass = new UncertaintyBenchmark();
        beside("seat", plain, 1e-3, 200, () -> 1e6 * seat.one_pad().leak());
        beside(
                "action",
                plain,
                1e-2,
                100,
                () -> 1e3 * action.one_key_to_settling().rebounds().getFirst().height());
        beside("first-order", plain, 1e-9, 200, firstOrder::withBecauses);
        DoubleSupplier draws = () ->
                mass.a_million_draws_of_a_typed_formula().drawn().interval().low();
        beside("mass", plain, 2e-3, 1, draws);
        beside(
                "mass",
                told(run(List.of(
                        "python3", sources.resolve("python/plain_mass.py").toString()))),
                2e-3,
                1,
                draws);
    }

    private static void beside(String name, Map<String, Told> plain, double within, int times, DoubleSupplier sum) {
        Told other = Objects.requireNonNull(plain.get(name));
        double ours = sum.getAsDouble();
        if (!(Math.abs(ours - other.value()) <= within * Math.abs(other.value()))) {
            throw new IllegalStateException("%s does not agree: %s, %s".formatted(name, ours, other.value()));
        }
        double seconds = seconds(sum, times);
        System.out.printf(
                Locale.ROOT,
                "%s: engine %.4g ms, plain %.4g ms, ratio %.2f%n",
                name,
                1e3 * seconds,
                1e3 * other.seconds(),
                seconds / other.seconds());
    }

    /** Processor time of one answer, the best of several rounds. */
    private static double seconds(DoubleSupplier sum, int times) {
        double best = Double.POSITIVE_INFINITY;
        double kept = 0;
        for (int round = 0; round < WARM + ROUNDS; round++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            for (int i = 0; i < times; i++) {
                kept += sum.getAsDouble();
            }
            long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
            best = round < WARM ? best : Math.min(best, took / 1e9 / times);
        }
        if (Double.isNaN(kept)) {
            throw new IllegalStateException("a sum has no value");
        }
        return best;
    }

    private static Map<String, Told> inC(Path source, int numbers) throws IOException, InterruptedException {
        Path program = Files.createTempDirectory("plain").resolve("plain");
        run(List.of("cc", "-O2", "-std=c11", "-o", program.toString(), source.toString(), "-lm"));
        RoomAir air = RoomAir.at(293.15);
        double damping = Bumper.givingBack(1, 1.5, 0.6, 0.3).damping();
        return told(
                run(List.of(program.toString(), "" + air.viscosity(), "" + air.density(), "" + damping, "" + numbers)));
    }

    /** Lines of "name value seconds". */
    private static Map<String, Told> told(String lines) {
        Map<String, Told> told = new LinkedHashMap<>();
        lines.lines()
                .map(line -> line.split(" ", 3))
                .forEach(words ->
                        told.put(words[0], new Told(Double.parseDouble(words[1]), Double.parseDouble(words[2]))));
        return told;
    }

    private static String run(List<String> words) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(words);
        // one core against one core
        builder.environment().putAll(Map.of("OMP_NUM_THREADS", "1", "OPENBLAS_NUM_THREADS", "1"));
        Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("this failed: " + String.join(" ", words));
        }
        return answer;
    }
}
