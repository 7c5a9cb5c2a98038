package hornwright.bench.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.sound.Baseline.Difference;
import hornwright.bench.sound.Baseline.Played;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BaselineTest {
    private static List<Played> session(double common, double spread, int times, double lastNote, Random dice) {
        List<Played> all = new ArrayList<>();
        for (int note = 0; note < 20; note++) {
            for (int i = 0; i < times; i++) {
                double cents = common + (note == 19 ? lastNote : 0) + spread * dice.nextGaussian();
                all.add(new Played("note." + note, cents));
            }
        }
        return all;
    }

    @Test
    void what_all_notes_share_is_no_change_of_the_horn() {
        Random dice = new Random(4);
        Baseline same = Baseline.compare(session(0, 3, 3, 0, dice), session(12, 3, 3, 0, dice))
                .orElseThrow();
        assertThat(same.common()).isCloseTo(12, within(3 * same.commonU()));
        assertThat(same.notes().stream().filter(Difference::changed).count()).isLessThanOrEqualTo(3);
    }

    @Test
    void one_note_that_moved_stands_out() {
        Random dice = new Random(5);
        Baseline moved = Baseline.compare(session(0, 3, 3, 0, dice), session(5, 3, 3, 20, dice))
                .orElseThrow();
        Difference last = moved.notes().getLast();
        assertThat(last.changed()).isTrue();
        assertThat(last.cents()).isCloseTo(20, within(3 * last.u()));
        assertThat(last.u()).isCloseTo(3 * Math.sqrt(2 / 3.0), within(0.6));
    }

    /** Twice the uncertainty is passed by chance about once in twenty. */
    @Test
    void unchanged_notes_are_called_changed_about_as_often_as_they_should() {
        Random dice = new Random(6);
        int called = 0;
        for (int run = 0; run < 100; run++) {
            called += (int)
                    Baseline.compare(session(0, 2, 3, 0, dice), session(0, 2, 3, 0, dice))
                            .orElseThrow()
                            .notes()
                            .stream()
                            .filter(Difference::changed)
                            .count();
        }
        assertThat(called / 2000.0).isBetween(0.03, 0.075);
    }

    @Test
    void without_a_note_played_twice_nothing_is_claimed() {
        Random dice = new Random(7);
        assertThat(Baseline.compare(session(0, 3, 1, 0, dice), session(0, 3, 1, 0, dice)))
                .isEmpty();
        assertThat(Baseline.compare(List.of(), session(0, 3, 2, 0, dice))).isEmpty();
    }
}
