package hornwright.benchmarks;

import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.HornAir;
import hornwright.bench.sound.SoundChapter;
import hornwright.bench.sound.SoundQuestion;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.AirColumn;
import hornwright.engines.air.AirInput;
import hornwright.engines.air.AirInput.Mouthpiece.Cavity;
import hornwright.engines.air.AirModel;
import hornwright.engines.air.AirResult;
import hornwright.engines.pitch.Heard;
import hornwright.engines.pitch.Note;
import hornwright.engines.pitch.Pitch;
import hornwright.engines.pitch.Recording;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.stream.Collectors;

/**
 * Air column and ear beside the same models in plain vectorised NumPy, in one run: both must find the same resonances, effects
 * of pads and notes, then their processor times are compared, and how the engine's time grows with holes and with length. Needs
 * python3 with numpy; the folder of the scripts is the one argument.
 */
public final class AgainstNumpy {
    private static final int ROUNDS = 30;
    private static final double AGREE_HZ = 0.01;
    private static final double AGREE_CENTS_PER_METRE = 5;
    private static final double AGREE_SHARE = 0.01;

    private AgainstNumpy() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        AirInput horn = HornAir.asBuilt(keywork, AirModel.CHAIGNE_KERGOMARD.at(26.85));
        Path folder = Path.of(arguments.length == 0 ? "benchmarks/src/main/python" : arguments[0]);
        String plain = Python.run(folder.resolve("plain_air.py"), json(horn));
        agree(AirColumn.reckon(sensitive(horn)), plain);
        double resonances = Python.number(plain, "seconds");
        double slopes = Python.number(plain, "slopeSeconds");
        print("three resonances of %d fingerings".formatted(horn.fingerings().size()), seconds(horn), resonances);
        print("the same with the effect of every open pad", seconds(sensitive(horn)), resonances + slopes);
        SoundQuestion question = SoundBenchmark.question();
        System.out.printf(
                Locale.ROOT,
                "forty notes to fit, offer and prediction: %.1f ms%n",
                1e3 * seconds(() -> SoundChapter.answer(question), 10));
        pitch(folder);
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

    private static double seconds(AirInput horn) {
        return seconds(() -> AirColumn.reckon(horn), ROUNDS);
    }

    /** Processor time of one answer, the best of many. */
    private static double seconds(Supplier<Object> answer, int rounds) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 2 * rounds; i++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Objects.requireNonNull(answer.get());
            long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
            best = i < rounds ? best : Math.min(best, took / 1e9);
        }
        return best;
    }

    private static AirInput sensitive(AirInput in) {
        return new AirInput(
                in.air(),
                in.bore(),
                in.mouthpiece(),
                in.bell(),
                in.holes(),
                in.fingerings(),
                in.leaks(),
                in.losses(),
                in.interaction(),
                in.modes(),
                true,
                null);
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
        Matcher peaks = Python.lists(plain, "peaks");
        Matcher slopes = Python.lists(plain, "slopes");
        for (AirResult.Voicing voicing : ours.fingerings()) {
            double[] theirs = Python.list(peaks);
            for (int i = 0; i < theirs.length && i < voicing.peaks().size(); i++) {
                close(theirs[i], voicing.peaks().get(i).frequency(), AGREE_HZ);
            }
            double[] moved = Python.list(slopes);
            for (int i = 0; i < moved.length; i++) {
                double sensitivity = voicing.sensitivities().get(i).centsPerMetre();
                close(moved[i], sensitivity, AGREE_CENTS_PER_METRE + AGREE_SHARE * Math.abs(sensitivity));
            }
        }
    }

    private static void close(double theirs, double ours, double within) {
        if (!(Math.abs(theirs - ours) < within)) {
            throw new IllegalStateException("the two do not agree: NumPy " + theirs + ", engine " + ours);
        }
    }

    /** Two minutes of sound; both must hear every note alike before they are timed. */
    private static void pitch(Path folder) throws IOException, InterruptedException {
        String plain = Python.run(folder.resolve("plain_pitch.py"), "");
        Recording recording = SoundBenchmark.twoMinutes();
        List<Note> notes = ((Heard.Notes) Pitch.hear(recording)).notes();
        double[] theirs = Python.list(Python.lists(plain, "notes"));
        for (int i = 0; i < theirs.length; i++) {
            close(1200 * Math.log(theirs[i] / notes.get(i).frequency()) / Math.log(2), 0, 0.1);
        }
        print(
                "two minutes of sound to its notes",
                seconds(() -> Pitch.hear(recording), 4),
                Python.number(plain, "pitchSeconds"));
    }

    private static void print(String what, double ours, double numpy) {
        System.out.printf(
                Locale.ROOT,
                "%s: engine %.1f ms, NumPy %.1f ms, %.1f times faster%n",
                what,
                1e3 * ours,
                1e3 * numpy,
                numpy / ours);
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
        String sounding = horn.fingerings().stream()
                .map(fingering -> String.valueOf(fingering.peak()))
                .collect(Collectors.joining(", "));
        String fingerings = horn.fingerings().stream()
                .map(fingering -> fingering.open().toString())
                .collect(Collectors.joining(", "));
        return "{\"rounds\": 2, \"volume\": %s, \"air\": %s, \"bore\": [%s], \"holes\": [%s], \"sounding\": [%s], \"fingerings\": [%s]}"
                .formatted(((Cavity) horn.mouthpiece()).volume(), air, bore, holes, sounding, fingerings);
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
