package hornwright.engines.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Another likelihood behind the same recursion, against a series many have published on. */
class CoalTest {
    private static final Ref REF = Ref.read("belief/coal");
    private static final double TOLERANCE = REF.number("tolerance");
    /** Small enough that two changes weigh nothing beside one. */
    private static final double RARE = 1e-12;

    private static final int[] JARRETT = Arrays.stream(
                    REF.text("jarrett.counts").split(" "))
            .mapToInt(Integer::parseInt)
            .toArray();

    @Test
    void one_change_in_the_list_of_dates_falls_in_1891() {
        oneChange("jarrett", JARRETT);
        assertThat(REF.number("first_year") + REF.number("jarrett.mode") - 1).isEqualTo(1891);
    }

    @Test
    void one_change_in_the_textbook_list_falls_a_year_earlier() {
        oneChange("textbook", textbook());
    }

    @Test
    void one_change_in_the_list_that_lost_a_year() {
        oneChange("short", shortList());
    }

    @Test
    void the_three_lists_have_the_totals_they_are_known_by() {
        assertThat(Arrays.stream(JARRETT).sum()).isEqualTo(191);
        assertThat(JARRETT).hasSize(112);
        assertThat(Arrays.stream(textbook()).sum()).isEqualTo(188);
        assertThat(Arrays.stream(shortList()).sum()).isEqualTo(191);
        assertThat(shortList()).hasSize(111);
    }

    @Test
    void many_changes_in_the_list_of_dates() {
        manyChanges("jarrett", JARRETT, 0.01);
        manyChanges("jarrett", JARRETT, 0.02);
    }

    @Test
    void many_changes_in_the_textbook_list() {
        manyChanges("textbook", textbook(), 0.01);
    }

    @Test
    void the_number_of_changes_agrees_with_a_recursion_that_carries_it_along() {
        double[] changes = new Segmentations(new PoissonGammaEvidence(JARRETT), 0.02).changes();
        assertThat(changes).containsExactly(carriedAlong(new PoissonGammaEvidence(JARRETT), 0.02), within(1e-12));
    }

    /** The second method for more positions than brute force can hold: the sum indexed by end and number of cuts. */
    private static double[] carriedAlong(SegmentEvidence evidence, double change) {
        int n = evidence.positions();
        double[][] sums = new double[n + 1][n];
        double[] logs = new double[n + 1];
        double scale = 1.6;
        for (int s = 0; s < n; s++) {
            evidence.from(s, logs);
            for (int t = s + 1; t <= n; t++) {
                double weight = Math.exp(logs[t] + scale * (t - s)) * Math.pow(1 - change, t - s - 1);
                if (s == 0) {
                    sums[t][0] += weight;
                }
                for (int m = 1; m <= s; m++) {
                    sums[t][m] += sums[s][m - 1] * change * weight;
                }
            }
        }
        double total = Arrays.stream(sums[n]).sum();
        return Arrays.stream(sums[n]).map(sum -> sum / total).toArray();
    }

    private static void oneChange(String list, int[] counts) {
        int n = counts.length;
        Segmentations all = new Segmentations(new PoissonGammaEvidence(counts), RARE);
        double[] before = all.walk((s, t, p) -> {});
        double[] changes = all.changes();
        double logFactor = Math.log(changes[1] / changes[0]) - Math.log((n - 1) * RARE / (1 - RARE));
        assertThat(logFactor).isCloseTo(REF.number(list + ".log_bayes_factor"), within(TOLERANCE));

        double total = 0;
        double rateBefore = 0;
        double rateAfter = 0;
        int mode = 1;
        for (int k = 1; k < n; k++) {
            int first = Arrays.stream(counts, 0, k).sum();
            int second = Arrays.stream(counts, k, n).sum();
            total += before[k];
            rateBefore += before[k] * (1 + first) / (1.0 + k);
            rateAfter += before[k] * (1 + second) / (1.0 + n - k);
            mode = before[k] > before[mode] ? k : mode;
        }
        assertThat((double) mode).isEqualTo(REF.number(list + ".mode"));
        assertThat(before[mode] / total).isCloseTo(REF.number(list + ".at_mode"), within(TOLERANCE));
        assertThat(before[39] / total).isBetween(0.1, 0.25);
        assertThat(rateBefore / total).isCloseTo(REF.number(list + ".rate_before"), within(TOLERANCE));
        assertThat(rateAfter / total).isCloseTo(REF.number(list + ".rate_after"), within(TOLERANCE));
    }

    private static void manyChanges(String list, int[] counts, double change) {
        Segmentations all = new Segmentations(new PoissonGammaEvidence(counts), change);
        String key = list + ".change_" + change;
        double[] expected = numbers(key + ".changes");
        double[] changes = all.changes();
        assertThat(changes[0]).isLessThan(5e-6);
        double summed =
                Arrays.stream(changes, 0, (int) REF.number("changes_up_to") + 1).sum();
        for (int m = 1; m <= expected.length; m++) {
            assertThat(changes[m] / summed).as("%s, %d changes", key, m).isCloseTo(expected[m - 1], within(TOLERANCE));
        }
        double[] lastYears = Arrays.stream(all.bestCuts())
                .mapToDouble(cut -> REF.number("first_year") + cut - 1)
                .toArray();
        assertThat(lastYears).containsExactly(numbers(key + ".best"));
    }

    private static double[] numbers(String key) {
        return Arrays.stream(REF.text(key).split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static int[] textbook() {
        int[] counts = JARRETT.clone();
        counts[1891 - 1851] = 1;
        counts[1931 - 1851] = 2;
        counts[1941 - 1851] = 4;
        counts[1942 - 1851] = 2;
        counts[1962 - 1851] = 0;
        return counts;
    }

    /** Starts 4 5 4 0 1 and lacks one of the empty years of the 1940s. */
    private static int[] shortList() {
        int lost = 1949 - 1851;
        int[] counts = new int[JARRETT.length - 1];
        System.arraycopy(JARRETT, 0, counts, 0, lost);
        System.arraycopy(JARRETT, lost + 1, counts, lost, counts.length - lost);
        counts[3] = 0;
        counts[4] = 1;
        return counts;
    }
}
