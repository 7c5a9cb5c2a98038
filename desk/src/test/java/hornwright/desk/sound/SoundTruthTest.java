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
import org.junit.jupiter.api.Test;

/** How often what the sound page states is so, over invented horns it never sees. */
@Tag("deep")
@Tag("sound")
class SoundTruthTest {
    private static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);
    private static final int HORNS = Integer.getInteger("hornwright.horns", 300);
    /** Nothing was tuned on these seeds; 1 to 300 served for that. */
    private static final long FIRST = Long.getLong("hornwright.first", 1001);

    private final Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
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

    @Test
    void what_is_stated_of_mouthpiece_bore_and_tuning_holds_about_95_times_in_100() {
        double was = 0;
        double then = 0;
        int offers = 0;
        for (int i = 0; i < HORNS; i++) {
            HiddenHorn horn = new HiddenHorn(keywork, AIR, FIRST + i);
            SoundAnswer answer = answer(horn);
            fitted(horn, Objects.requireNonNull(answer.fitted()));
            double[][] cents = horn.set(answer.offered());
            offers += answer.offered().isEmpty() ? 0 : 1;
            double common = Objects.requireNonNull(answer.common()).value();
            for (NoteLine note : answer.notes()) {
                if (note.predicted() != null) {
                    predicted(note, cents, common);
                }
                int at = keywork.fingerings().list().indexOf(note.fingering());
                was += answer.offered().isEmpty() ? 0 : Math.pow(cents[0][at] - common, 2);
                then += answer.offered().isEmpty() ? 0 : Math.pow(cents[1][at] - common, 2);
            }
        }
        tallies.forEach((what, tally) -> System.out.println(what + ": " + tally));
        System.out.printf(
                "%d of %d horns were offered a height; cents from the common part %.2f before, %.2f after%n",
                offers, HORNS, Math.sqrt(was / offers / 40), Math.sqrt(then / offers / 40));
        tallies.forEach((what, tally) -> assertThat(tally.share()).as(what).isBetween(0.93, 0.97));
        assertThat(then).isLessThan(was);
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
        add("tuning after the advice, cents", note.then(), cents[1][at] - common);
        double effect = note.then().value() - note.played().value();
        double u =
                Math.sqrt(Math.pow(note.then().u(), 2) - Math.pow(note.played().u(), 2));
        if (Math.abs(effect) >= 0.5) {
            tally("effect of the advice, cents").add(effect - (cents[1][at] - cents[0][at]), u);
        }
    }

    private void add(String what, PlannedNumber stated, double truth) {
        tally(what).add(stated.value() - truth, stated.u());
    }

    private Tally tally(String what) {
        return tallies.computeIfAbsent(what, none -> new Tally());
    }
}
