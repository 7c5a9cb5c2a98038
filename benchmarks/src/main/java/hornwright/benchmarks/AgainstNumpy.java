package hornwright.benchmarks;

import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.HornAir;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Mouthpiece.Cavity;
import hornwright.engines.air.AirModel;
import hornwright.engines.air.AirResult;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The air column beside the same model in plain vectorised NumPy, in one run: both must find the same resonances, then their
 * processor times are compared, and how the engine's time grows with holes and with length. Needs python3 with numpy; the
 * folder of the script is the one argument.
 */
public final class AgainstNumpy {
    private static final int ROUNDS = 20;
    private static final int WARM = 30;
    private static final double AGREE_HZ = 0.01;

    private AgainstNumpy() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        AirInput horn = HornAir.asBuilt(keywork, AirModel.CHAIGNE_KERGOMARD.at(26.85));
        String plain = python(Path.of(arguments.length == 0 ? "benchmarks/src/main/python" : arguments[0]), horn);
        agree(AirColumn.reckon(horn), plain);
        double numpy = number(plain, "\"seconds\": ([0-9.e+-]+)");
        double ours = seconds(horn);
        System.out.printf(
                Locale.ROOT,
                "three resonances of %d fingerings: engine %.1f ms, NumPy %.1f ms, %.1f times faster%n",
                horn.fingerings().size(),
                1e3 * ours,
                1e3 * numpy,
                numpy / ours);
        for (int holes : new int[] {3, 6, 12, 24}) {
            System.out.printf(
                    Locale.ROOT,
                    "with %d holes and 25 fingerings: %.1f ms%n",
                    holes,
                    1e3 * seconds(fewer(horn, holes)));
        }
        for (int times = 1; times <= 4; times *= 2) {
            System.out.printf(
                    Locale.ROOT,
                    "a bore %d times as long, 25 fingerings: %.1f ms%n",
                    times,
                    1e3 * seconds(longer(fewer(horn, 24), times)));
        }
    }

    /** Processor time of one answer, the best of many. */
    private static double seconds(AirInput horn) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < WARM + ROUNDS; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            AirResult result = AirColumn.reckon(horn);
            long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
            Objects.requireNonNull(result.fingerings().getFirst().sounding());
            best = i < WARM ? best : Math.min(best, took / 1e9);
        }
        return best;
    }

    /** The holes nearest the bell only, one more open each time. */
    private static AirInput fewer(AirInput horn, int holes) {
        List<AirInput.Hole> kept = horn.holes().stream()
                .sorted(java.util.Comparator.comparingDouble(hole -> -hole.at()))
                .limit(holes)
                .toList();
        List<AirInput.Fingering> fingerings = new ArrayList<>();
        for (int i = 0; i < 25; i++) {
            List<Integer> open = new ArrayList<>();
            for (int hole = 0; hole < i % (holes + 1); hole++) {
                open.add(hole);
            }
            fingerings.add(new AirInput.Fingering(open, 1));
        }
        return horn.withFingerings(List.of()).withHoles(kept).withFingerings(fingerings);
    }

    /** The same holes on a longer bore: more slices between them and a lower note. */
    private static AirInput longer(AirInput horn, int times) {
        return horn.withBore(horn.bore().stream()
                        .map(point -> new AirInput.BorePoint(point.at() * times, point.radius()))
                        .toList())
                .withHoles(horn.holes().stream()
                        .map(hole -> new AirInput.Hole(
                                hole.at() * times, hole.radius(), hole.chimney(), hole.rimWall(), hole.pad()))
                        .toList());
    }

    private static void agree(AirResult ours, String plain) {
        Matcher lists = Pattern.compile("\\[([0-9., ]+)]").matcher(plain);
        for (AirResult.Voicing voicing : ours.fingerings()) {
            if (!lists.find()) {
                throw new IllegalStateException("NumPy has answered too few fingerings");
            }
            String[] peaks = lists.group(1).split(", ");
            for (int i = 0; i < peaks.length && i < voicing.peaks().size(); i++) {
                double apart =
                        Double.parseDouble(peaks[i]) - voicing.peaks().get(i).frequency();
                if (!(Math.abs(apart) < AGREE_HZ)) {
                    throw new IllegalStateException("the two do not agree: " + peaks[i] + " "
                            + voicing.peaks().get(i));
                }
            }
        }
    }

    private static double number(String text, String shape) {
        Matcher found = Pattern.compile(shape).matcher(text);
        if (!found.find()) {
            throw new IllegalStateException("NumPy has said: " + text);
        }
        return Double.parseDouble(found.group(1));
    }

    private static String python(Path folder, AirInput horn) throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder("python3", folder.resolve("plain_air.py").toString());
        // one core against one core
        builder.environment().putAll(java.util.Map.of("OMP_NUM_THREADS", "1", "OPENBLAS_NUM_THREADS", "1"));
        Process process = builder.redirectError(ProcessBuilder.Redirect.INHERIT).start();
        process.getOutputStream().write(json(horn).getBytes(StandardCharsets.UTF_8));
        process.getOutputStream().close();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException("python3 with numpy is needed");
        }
        return answer;
    }

    private static String json(AirInput horn) {
        String air = "{\"speed\": %s, \"density\": %s, \"viscosity\": %s, \"gamma\": %s, \"prandtlRoot\": %s}"
                .formatted(
                        horn.air().speed(),
                        horn.air().density(),
                        horn.air().viscosity(),
                        horn.air().gamma(),
                        horn.air().prandtlRoot());
        String bore = horn.bore().stream()
                .map(point -> "[%s, %s]".formatted(point.at(), point.radius()))
                .collect(Collectors.joining(", "));
        String holes = horn.holes().stream().map(AgainstNumpy::json).collect(Collectors.joining(", "));
        String fingerings = horn.fingerings().stream()
                .map(fingering -> fingering.open().toString())
                .collect(Collectors.joining(", "));
        return "{\"rounds\": 2, \"volume\": %s, \"air\": %s, \"bore\": [%s], \"holes\": [%s], \"fingerings\": [%s]}"
                .formatted(((Cavity) horn.mouthpiece()).volume(), air, bore, holes, fingerings);
    }

    private static String json(AirInput.Hole hole) {
        AirInput.Pad pad = Objects.requireNonNull(hole.pad());
        return "{\"at\": %s, \"radius\": %s, \"chimney\": %s, \"rimWall\": %s, \"padRadius\": %s, \"height\": %s, \"protrusion\": %s}"
                .formatted(
                        hole.at(),
                        hole.radius(),
                        hole.chimney(),
                        hole.rimWall(),
                        pad.radius(),
                        pad.height(),
                        pad.protrusion());
    }
}
