package hornwright.benchmarks;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundChapter;
import hornwright.bench.sound.SoundQuestion;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Stage;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.pitch.Heard;
import hornwright.engines.pitch.Pitch;
import hornwright.engines.pitch.Recording;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
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

/** From a play test of forty notes to advice, and from two minutes of sound to its notes. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SoundBenchmark {
    private static final int RATE = 44_100;
    private final SoundQuestion question = question();
    private final Recording twoMinutes = twoMinutes();

    static SoundQuestion question() {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        Random dice = new Random(3);
        List<PlayTest.Playing> notes = new ArrayList<>();
        keywork.fingerings()
                .forEach(note -> notes.add(new PlayTest.Playing(note.id(), 12 * dice.nextGaussian(), null)));
        PlayTest test = new PlayTest(
                "p.1",
                new PlayTest.Conditions("", "", null, null, 440),
                HeardBy.TYPED,
                notes,
                List.of(),
                Map.of(),
                "",
                null,
                Stage.ARRIVAL);
        return new SoundQuestion(
                keywork,
                Planner.plan(PlanInputs.of(keywork)),
                ShopRules.shipped(),
                List.of(),
                List.of(),
                List.of(test));
    }

    /** Scales of six partials, a note a second. */
    static Recording twoMinutes() {
        double[] sound = new double[120 * RATE];
        for (int note = 0; note < 120; note++) {
            double hz = 140 * Math.pow(2, note % 32 / 12.0);
            for (int i = 0; i < RATE * 0.9; i++) {
                double fade = Math.min(1, Math.min(i, RATE * 0.9 - i) / (0.02 * RATE));
                for (int partial = 1; partial <= 6; partial++) {
                    sound[note * RATE + i] += 0.2 * fade / partial * Math.sin(2 * Math.PI * partial * hz * i / RATE);
                }
            }
        }
        return new Recording(sound, RATE);
    }

    @Benchmark
    public SoundAnswer forty_notes_to_fit_offer_and_prediction() {
        return SoundChapter.answer(question);
    }

    @Benchmark
    public Heard two_minutes_of_sound_to_notes() {
        return Pitch.hear(twoMinutes);
    }
}
