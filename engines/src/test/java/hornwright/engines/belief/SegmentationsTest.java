package hornwright.engines.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SegmentationsTest {
    @Test
    void a_segment_weighs_what_the_closed_form_says() {
        Ref ref = Ref.read("belief/segments");
        for (String name : ref.text("cases").split(" ")) {
            double[] counts = numbers(name.replace('-', ' '));
            List<Sighting> seen = new ArrayList<>();
            for (int k = 0; k < counts.length; k++) {
                for (int i = 0; i < counts[k]; i++) {
                    seen.add(new Sighting(seen.size(), "m" + k, 1));
                }
            }
            double[] logs = new double[seen.size() + 1];
            evidence(seen, counts.length, ref.number(name + ".prior")).from(0, logs);
            ref.check(name + ".one_in", Math.exp(-logs[seen.size()]), 1);
        }
    }

    @Test
    void three_sequences_agree_with_all_their_partitions() {
        Ref ref = Ref.read("belief/partitions");
        double tolerance = ref.number("tolerance");
        for (String name : ref.text("cases").split(" ")) {
            double[] sequence = numbers(ref.text(name + ".sequence"));
            List<Sighting> seen = new ArrayList<>();
            for (double k : sequence) {
                seen.add(new Sighting(seen.size(), "m" + (int) k, 1));
            }
            int categories = (int) ref.number(name + ".categories");
            Segmentations all = new Segmentations(
                    evidence(seen, categories, ref.number(name + ".prior")), ref.number(name + ".change"));
            ref.check(name + ".evidence", Math.exp(all.logEvidence()), 1);
            double[] changes = numbers(ref.text(name + ".changes"));
            assertThat(Arrays.copyOf(all.changes(), changes.length))
                    .as(name)
                    .containsExactly(changes, within(tolerance));
            double[] before = all.walk((s, t, p) -> {});
            for (int c : new int[] {5, 10}) {
                String key = name + ".change_after_" + c;
                if (c < seen.size() && !name.equals("S1") && !(name.equals("S3") && c == 10)) {
                    ref.check(key, before[c], 1);
                }
            }
            assertThat(all.bestCuts()).as(name).containsExactly((int) ref.number(name + ".best"));
        }
    }

    @Test
    void a_change_in_the_middle_is_likeliest_and_the_rest_is_symmetric() {
        Ref ref = Ref.read("belief/partitions");
        List<Sighting> seen = new ArrayList<>();
        for (double k : numbers(ref.text("S1.sequence"))) {
            seen.add(new Sighting(seen.size(), "m" + (int) k, 1));
        }
        double[] before = new Segmentations(evidence(seen, 2, 1), 0.1).walk((s, t, p) -> {});
        assertThat(Arrays.copyOfRange(before, 1, 8))
                .containsExactly(numbers(ref.text("S1.change_after")), within(ref.number("tolerance")));
    }

    @Test
    void every_answer_agrees_with_the_sum_over_all_partitions() {
        Random random = new Random(11);
        for (int trial = 0; trial < 200; trial++) {
            int n = 1 + random.nextInt(10);
            int categories = 1 + random.nextInt(4);
            double change = trial % 10 == 0 ? random.nextInt(2) : random.nextDouble();
            SegmentEvidence evidence =
                    evidence(someSightings(random, n, categories), categories, 0.05 + 2 * random.nextDouble());
            compareWithAllPartitions(evidence, change);
        }
    }

    private static void compareWithAllPartitions(SegmentEvidence evidence, double change) {
        int n = evidence.positions();
        double[] total = new double[1];
        double[] changes = new double[n];
        double[] cutBefore = new double[n + 1];
        double[][] segments = new double[n][n + 1];
        double[] most = new double[1];
        EveryPartition.show(evidence, change, (bounds, weight) -> {
            total[0] += weight;
            changes[bounds.length - 2] += weight;
            most[0] = Math.max(most[0], weight);
            for (int i = 0; i + 1 < bounds.length; i++) {
                cutBefore[bounds[i]] += weight;
                segments[bounds[i]][bounds[i + 1]] += weight;
            }
            cutBefore[n] += weight;
        });
        Segmentations all = new Segmentations(evidence, change);
        assertThat(all.logEvidence()).isCloseTo(Math.log(total[0]), within(1e-10));
        double[] found = all.changes();
        double[] before = all.walk((s, t, p) -> assertThat(p).isCloseTo(segments[s][t] / total[0], within(1e-11)));
        for (int i = 0; i < n; i++) {
            assertThat(found[i]).isCloseTo(changes[i] / total[0], within(1e-11));
            assertThat(before[i]).isCloseTo(cutBefore[i] / total[0], within(1e-11));
        }
        assertThat(weightOf(all.bestCuts(), evidence, change)).isCloseTo(most[0], within(1e-9 * most[0]));
    }

    private static double weightOf(int[] cuts, SegmentEvidence evidence, double change) {
        double[] found = new double[1];
        EveryPartition.show(evidence, change, (bounds, weight) -> {
            if (Arrays.equals(Arrays.copyOfRange(bounds, 1, bounds.length - 1), cuts)) {
                found[0] = weight;
            }
        });
        return found[0];
    }

    private static List<Sighting> someSightings(Random random, int n, int categories) {
        List<Sighting> seen = new ArrayList<>();
        boolean fine = random.nextBoolean();
        for (int i = 0; i < n; i++) {
            double weight = fine ? 0.01 + 0.99 * random.nextDouble() : (1 + random.nextInt(4)) / 4.0;
            seen.add(new Sighting(i, "m" + random.nextInt(categories), weight));
            if (random.nextInt(3) == 0) {
                seen.add(new Sighting(i, "m" + random.nextInt(categories), weight));
            }
        }
        return seen;
    }

    private static SegmentEvidence evidence(List<Sighting> seen, int categories, double prior) {
        List<String> materials = new ArrayList<>();
        for (int k = 0; k < categories; k++) {
            materials.add("m" + k);
        }
        return new DirichletEvidence(new Positions(seen, materials), prior);
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
