package hornwright.desk.sound;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundAnswer.Fitted;
import hornwright.bench.sound.SoundAnswer.NoteLine;
import hornwright.bench.sound.SoundChapter;
import hornwright.bench.sound.SoundQuestion;
import hornwright.bench.survey.Reading;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirModel;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How often what the sound page states is so, over invented horns it never sees. */
@Tag("deep")
@Tag("sound")
class SoundTruthTest {
    private static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);
    private static final int HORNS = Integer.getInteger("hornwright.horns", 300);
    /** Nothing was tuned on these seeds; 1 to 300 served for that. */
    private static final long FIRST = Long.getLong("hornwright.first", 1001);

    private Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final Map<String, Tally> tallies = new TreeMap<>();

    /** How often a stated ± held, and how large it and the error were. */
    private static final class Tally {
        int all;
        int held;
        double squares;
        double stated;
        double sum;

        void add(double error, double u) {
            all++;
            held += Math.abs(error) <= 2 * u ? 1 : 0;
            sum += error;
            squares += error * error;
            stated += u * u;
        }

        double share() {
            return held / (double) all;
        }

        @Override
        public String toString() {
            return "%d of %d held, %.3f; error %.3g, of it common to all %.2g; stated u %.3g"
                    .formatted(held, all, share(), Math.sqrt(squares / all), sum / all, Math.sqrt(stated / all));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"alto", "tenor"})
    void what_is_stated_of_mouthpiece_bore_and_tuning_holds_about_95_times_in_100(String voice) {
        keywork = KeyworkFile.shipped("tarrant-loe-" + voice).orElseThrow();
        tallies.clear();
        double[] off = new double[3];
        int offers = 0;
        for (int i = 0; i < HORNS; i++) {
            HiddenHorn horn = new HiddenHorn(keywork, AIR, FIRST + i);
            SoundAnswer answer = answer(horn);
            fitted(horn, Objects.requireNonNull(answer.fitted()));
            double[][] cents = horn.set(answer.offered());
            offers += answer.offered().isEmpty() ? 0 : 1;
            double common = Objects.requireNonNull(answer.common()).value();
            answer.notes().forEach(note -> predicted(note, cents, common));
            for (int when = 0; when < 3 && !answer.offered().isEmpty(); when++) {
                off[when] += meanSquare(cents[when], common);
            }
        }
        tallies.forEach((what, tally) -> System.out.println(voice + ", " + what + ": " + tally));
        System.out.printf(
                "%s: %d of %d horns were offered a height; cents from the common part %.2f as played, %.2f with the factory heights, %.2f with the offer%n",
                voice,
                offers,
                HORNS,
                Math.sqrt(off[0] / offers),
                Math.sqrt(off[1] / offers),
                Math.sqrt(off[2] / offers));
        tallies.forEach((what, tally) -> assertThat(tally.share()).as(what).isBetween(0.93, 0.97));
        assertThat(off[2]).isLessThan(off[1]);
    }

    private static double meanSquare(double[] cents, double common) {
        double sum = 0;
        for (double note : cents) {
            sum += Math.pow(note - common, 2) / cents.length;
        }
        return sum;
    }

    private SoundAnswer answer(HiddenHorn horn) {
        List<Reading> readings = horn.readings();
        Plan plan = Planner.plan(PlanInputs.of(keywork).withReadings(readings));
        return SoundChapter.answer(
                new SoundQuestion(keywork, plan, ShopRules.shipped(), readings, List.of(), List.of(horn.played())));
    }

    private void fitted(HiddenHorn horn, Fitted fitted) {
        add("mouthpiece volume, cm³", fitted.volume(), horn.volumeMm3() / 1e3);
        add("bore at the neck, %", fitted.neck(), 100 * horn.share(0));
        add("bore half way, %", fitted.middle(), 100 * horn.share(1));
        add("bore at the bell, %", fitted.bell(), 100 * horn.share(2));
    }

    private void predicted(NoteLine note, double[][] cents, double common) {
        int at = keywork.fingerings().list().indexOf(note.fingering());
        if (note.planned() != null) {
            told("with the factory heights", note, note.before(), cents[1][at], cents[0][at], common);
        }
        if (note.predicted() != null) {
            told("with the offer", note, note.then(), cents[2][at], cents[0][at], common);
        }
    }

    private void told(String when, NoteLine note, PlannedNumber stated, double truth, double was, double common) {
        add("tuning " + when + ", cents", stated, truth - common);
        double effect = stated.value() - note.played().value();
        double u = Math.sqrt(Math.pow(stated.u(), 2) - Math.pow(note.played().u(), 2));
        if (Math.abs(effect) >= 0.5) {
            tally("effect " + when + ", cents").add(effect - (truth - was), u);
        }
    }

    private void add(String what, PlannedNumber stated, double truth) {
        tally(what).add(stated.value() - truth, stated.u());
    }

    private Tally tally(String what) {
        return tallies.computeIfAbsent(what, none -> new Tally());
    }
}
