package hornwright.engines.belief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A long line answered from the five hundred positions around each serial, against the exact sum over all of it. */
class LongBeliefTest {
    private static final List<String> MATERIALS = List.of("cork", "felt", "other");
    /** Twice the deviation of a share of 0.04 among the 250 positions on one side: 2 √(0.04 · 0.96 / 250). */
    private static final double STATED = 0.025;

    /** Four changes at places drawn by lot, four looks in a hundred that show another material. */
    private static List<Sighting> line(int positions, Random random) {
        int[] changes = random.ints(4, positions / 20, positions).sorted().toArray();
        List<Sighting> line = new ArrayList<>();
        for (int i = 0; i < positions; i++) {
            int era = 0;
            for (int change : changes) {
                era += i >= change ? 1 : 0;
            }
            String material = random.nextInt(25) == 0 ? "other" : era % 2 == 0 ? "cork" : "felt";
            line.add(new Sighting(10_000 + 7L * i, material, random.nextBoolean() ? 1 : 0.75));
        }
        return line;
    }

    private static BeliefQuestion question(List<Sighting> line, long step) {
        long last = line.getLast().serial();
        List<Long> at = LongStream.rangeClosed(0, last / step)
                .map(i -> 9_900 + i * step)
                .boxed()
                .toList();
        return new BeliefQuestion(line, MATERIALS, 0.05, 0.04, at);
    }

    private static double worst(List<BeliefAnswer.At> one, List<BeliefAnswer.At> other) {
        double worst = 0;
        for (int i = 0; i < one.size(); i++) {
            for (Map.Entry<String, Double> chance : one.get(i).probabilities().entrySet()) {
                double exact = other.get(i).probabilities().getOrDefault(chance.getKey(), 0.0);
                worst = Math.max(worst, Math.abs(chance.getValue() - exact));
            }
        }
        return worst;
    }

    @Test
    @Tag("slow")
    void on_lines_of_five_thousand_it_differs_from_the_exact_sum_by_less_than_stated() {
        for (int seed = 1; seed <= 3; seed++) {
            BeliefQuestion question = question(line(5_000, new Random(seed)), 50);
            double worst = worst(LongBelief.at(question), Belief.of(question).at());
            assertThat(worst).as("seed " + seed).isLessThan(STATED).isPositive();
        }
    }

    @Test
    void it_says_of_every_serial_how_it_stands_as_the_exact_sum_does() {
        BeliefQuestion question = question(line(2_000, new Random(9)), 77);
        List<BeliefAnswer.At> exact = Belief.of(question).at();
        List<BeliefAnswer.At> near = LongBelief.at(question);
        assertThat(near).extracting(BeliefAnswer.At::serial).isEqualTo(question.at());
        assertThat(near)
                .extracting(BeliefAnswer.At::standing)
                .isEqualTo(exact.stream().map(BeliefAnswer.At::standing).toList());
    }

    @Test
    void a_line_that_fits_the_window_is_answered_exactly() {
        BeliefQuestion question = question(line(LongBelief.WINDOW, new Random(4)), 100);
        assertThat(LongBelief.at(question)).isEqualTo(Belief.of(question).at());
    }
}
