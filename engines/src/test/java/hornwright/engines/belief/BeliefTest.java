package hornwright.engines.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.belief.BeliefAnswer.At;
import hornwright.engines.belief.BeliefAnswer.ChangeAfter;
import hornwright.engines.belief.BeliefAnswer.ChangeOver;
import hornwright.engines.belief.BeliefAnswer.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class BeliefTest {
    private static final List<String> MATERIALS = List.of("felt", "cork", "leather");

    @Test
    void the_answer_at_any_serial_agrees_with_an_average_over_all_partitions() {
        Random random = new Random(21);
        for (int trial = 0; trial < 100; trial++) {
            BeliefQuestion question = someQuestion(random, 1 + random.nextInt(8));
            BeliefAnswer answer = Belief.of(question);
            for (At at : answer.at()) {
                double[] expected = atByAllPartitions(question, at.serial());
                for (int k = 0; k < MATERIALS.size(); k++) {
                    assertThat(at.probabilities().get(MATERIALS.get(k))).isCloseTo(expected[k], within(1e-11));
                }
            }
        }
    }

    @Test
    void the_chance_of_a_change_inside_an_interval_agrees_with_all_partitions() {
        Random random = new Random(22);
        int intervals = 0;
        for (int trial = 0; trial < 800; trial++) {
            BeliefQuestion question = someQuestion(random, 2 + random.nextInt(9));
            Positions seen = new Positions(question.observations(), MATERIALS);
            for (ChangeOver over : Belief.of(question).changeOver()) {
                int low = Arrays.binarySearch(seen.serials, over.from()) + 1;
                int high = Arrays.binarySearch(seen.serials, over.to());
                double[] sums = new double[2];
                EveryPartition.show(evidence(seen, question), question.change(), (bounds, weight) -> {
                    sums[0] += weight;
                    boolean inside = Arrays.stream(bounds, 1, bounds.length - 1).anyMatch(c -> low <= c && c <= high);
                    sums[1] += inside ? weight : 0;
                });
                assertThat(over.probability()).isCloseTo(sums[1] / sums[0], within(1e-11));
                intervals++;
            }
        }
        assertThat(intervals).isGreaterThan(100);
    }

    @Test
    void a_change_over_stops_growing_at_95_in_100_or_at_its_neighbour() {
        Random random = new Random(23);
        for (int trial = 0; trial < 300; trial++) {
            BeliefQuestion question = someQuestion(random, 2 + random.nextInt(14));
            BeliefAnswer answer = Belief.of(question);
            List<ChangeOver> overs = answer.changeOver();
            assertThat(overs).hasSize(answer.best().size() - 1);
            for (int i = 0; i < overs.size(); i++) {
                assertThat(overs.get(i).from())
                        .isLessThanOrEqualTo(answer.best().get(i).to());
                assertThat(overs.get(i).to())
                        .isGreaterThanOrEqualTo(answer.best().get(i + 1).from());
                assertThat(i == 0 || overs.get(i - 1).to() <= overs.get(i).from())
                        .isTrue();
            }
            boolean alone = overs.size() == 1;
            boolean whole = alone
                    && overs.getFirst().from() == answer.best().getFirst().from()
                    && overs.getFirst().to() == answer.best().getLast().to();
            assertThat(!alone || whole || overs.getFirst().probability() >= 0.95)
                    .isTrue();
        }
    }

    @Test
    void a_clean_change_over_is_found_between_the_two_that_differ() {
        List<Sighting> seen = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            seen.add(new Sighting(40_000 + 100 * i, i < 12 ? "felt" : "cork", 1));
        }
        BeliefAnswer answer = Belief.of(new BeliefQuestion(seen, MATERIALS, 0.5, 0.02, List.of(41_150L, 39_000L)));
        assertThat(answer.best())
                .containsExactly(
                        new Segment(40_000, 41_100, Map.of("felt", 12.0, "cork", 0.0, "leather", 0.0)),
                        new Segment(41_200, 41_900, Map.of("felt", 0.0, "cork", 8.0, "leather", 0.0)));
        ChangeOver over = answer.changeOver().getFirst();
        assertThat(over.from()).isLessThanOrEqualTo(41_100);
        assertThat(over.to()).isGreaterThanOrEqualTo(41_200);
        assertThat(over.probability()).isGreaterThanOrEqualTo(0.95);
        At between = answer.at().getFirst();
        assertThat(between.standing()).isEqualTo(Standing.INTERPOLATED);
        assertThat(chance(between, "felt")).isBetween(0.4, 0.6);
        assertThat(answer.at().getLast().standing()).isEqualTo(Standing.EXTRAPOLATED);
        assertThat(chance(answer.at().getLast(), "felt")).isGreaterThan(0.9);
    }

    @Test
    void the_mirror_image_of_the_serials_gives_the_mirror_image_of_the_answer() {
        Random random = new Random(24);
        for (int trial = 0; trial < 50; trial++) {
            BeliefQuestion question = someQuestion(random, 40);
            BeliefAnswer answer = Belief.of(question);
            BeliefAnswer mirror = Belief.of(mirrored(question));
            assertThat(mirror.logEvidence()).isCloseTo(answer.logEvidence(), within(1e-9));
            for (int m = 0; m < answer.changes().size(); m++) {
                assertThat(mirror.changes().get(m)).isCloseTo(answer.changes().get(m), within(1e-10));
            }
            List<ChangeAfter> after = answer.changeAfter();
            for (int i = 0; i < after.size(); i++) {
                assertThat(mirror.changeAfter().get(after.size() - 1 - i).probability())
                        .isCloseTo(after.get(i).probability(), within(1e-10));
            }
            for (int i = 0; i < answer.at().size(); i++) {
                assertThat(chance(mirror.at().get(i), "cork"))
                        .isCloseTo(chance(answer.at().get(i), "cork"), within(1e-10));
            }
        }
    }

    @Test
    void the_order_in_which_sightings_are_told_does_not_matter() {
        Random random = new Random(25);
        for (int trial = 0; trial < 50; trial++) {
            BeliefQuestion question = someQuestion(random, 30);
            List<Sighting> shuffled = new ArrayList<>(question.observations());
            Collections.shuffle(shuffled, random);
            BeliefAnswer other = Belief.of(with(question, shuffled));
            assertThat(other.logEvidence()).isCloseTo(Belief.of(question).logEvidence(), within(1e-10));
        }
    }

    @Test
    void two_sightings_at_one_serial_count_as_one_of_their_summed_weight() {
        List<Sighting> twice =
                List.of(new Sighting(1, "felt", 0.25), new Sighting(1, "felt", 0.5), new Sighting(2, "cork", 1));
        List<Sighting> once = List.of(new Sighting(1, "felt", 0.75), new Sighting(2, "cork", 1));
        assertThat(ask(twice)).isEqualTo(ask(once));
    }

    @Test
    void a_sighting_without_weight_is_as_if_never_made() {
        List<Sighting> seen = List.of(new Sighting(1, "felt", 1), new Sighting(5, "cork", 1));
        List<Sighting> more = new ArrayList<>(seen);
        more.add(new Sighting(3, "leather", 0));
        assertThat(ask(more)).isEqualTo(ask(seen));
        assertThat(ask(more).at().getFirst().standing()).isEqualTo(Standing.INTERPOLATED);
    }

    @Test
    void a_weight_just_off_a_round_number_gives_almost_the_answer_of_the_round_one() {
        Random random = new Random(26);
        List<Sighting> round = new ArrayList<>();
        List<Sighting> off = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String material = MATERIALS.get(random.nextInt(3));
            round.add(new Sighting(i, material, 0.5));
            off.add(new Sighting(i, material, 0.5 + 1e-7 * Math.sqrt(2)));
        }
        assertThat(ask(off).logEvidence()).isCloseTo(ask(round).logEvidence(), within(1e-4));
        assertThat(ask(off).logEvidence()).isNotEqualTo(ask(round).logEvidence());
    }

    @Test
    void one_more_sighting_of_a_material_makes_it_likelier_there() {
        Random random = new Random(27);
        for (int trial = 0; trial < 200; trial++) {
            BeliefQuestion question = someQuestion(random, 1 + random.nextInt(25));
            for (At at : Belief.of(question).at()) {
                List<Sighting> more = new ArrayList<>(question.observations());
                more.add(new Sighting(at.serial(), "cork", 1));
                BeliefAnswer after = Belief.of(with(question, more));
                At again = after.at().get(question.at().indexOf(at.serial()));
                assertThat(chance(again, "cork")).isGreaterThan(chance(at, "cork"));
            }
        }
    }

    @Test
    void probabilities_add_up() {
        Random random = new Random(28);
        for (int trial = 0; trial < 100; trial++) {
            BeliefAnswer answer = Belief.of(someQuestion(random, 1 + random.nextInt(60)));
            assertThat(answer.changes().stream().mapToDouble(p -> p).sum()).isCloseTo(1, within(1e-12));
            double expectedChanges = answer.changeAfter().stream()
                    .mapToDouble(ChangeAfter::probability)
                    .sum();
            double meanChanges = 0;
            for (int m = 0; m < answer.changes().size(); m++) {
                meanChanges += m * answer.changes().get(m);
            }
            assertThat(expectedChanges).isCloseTo(meanChanges, within(1e-10));
            for (At at : answer.at()) {
                assertThat(at.probabilities().values().stream()
                                .mapToDouble(p -> p)
                                .sum())
                        .isCloseTo(1, within(1e-12));
            }
        }
    }

    @Test
    void among_equally_probable_segmentations_the_one_with_fewer_cuts_and_lower_serials_is_best() {
        List<Sighting> seen = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            seen.add(new Sighting(i, i == 4 ? "cork" : "felt", 1));
        }
        BeliefAnswer mirrorSymmetric =
                Belief.of(new BeliefQuestion(seen, List.of("felt", "cork"), 0.01, 0.49, List.of()));
        assertThat(mirrorSymmetric.best().stream().map(Segment::from)).containsExactly(0L, 4L, 5L);
        BeliefAnswer oneMaterial = Belief.of(new BeliefQuestion(
                List.of(new Sighting(1, "felt", 1), new Sighting(2, "felt", 1)), List.of("felt"), 1, 0.5, List.of()));
        assertThat(oneMaterial.best()).hasSize(1);
        BeliefAnswer three = Belief.of(new BeliefQuestion(
                List.of(new Sighting(1, "felt", 1), new Sighting(2, "cork", 0.01), new Sighting(3, "felt", 1)),
                List.of("felt", "cork"),
                1,
                1,
                List.of()));
        assertThat(three.best()).hasSize(3);
    }

    @Test
    void nothing_seen_leaves_every_material_equally_likely() {
        BeliefAnswer answer = ask(List.of());
        assertThat(answer.logEvidence()).isZero();
        assertThat(answer.changes()).isEmpty();
        assertThat(answer.best()).isEmpty();
        assertThat(answer.at().getFirst().standing()).isEqualTo(Standing.EXTRAPOLATED);
        assertThat(chance(answer.at().getFirst(), "felt")).isCloseTo(1.0 / 3, within(1e-15));
    }

    @Test
    void questions_without_sense_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Sighting(1, "felt", 1.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Sighting(1, "felt", Double.NaN));
        List<Sighting> none = List.of();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BeliefQuestion(none, List.of("a", "a"), 1, 0.1, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new BeliefQuestion(none, List.of(), 1, 0.1, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new BeliefQuestion(none, MATERIALS, 0, 0.1, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new BeliefQuestion(none, MATERIALS, 1, 1.1, List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BeliefQuestion(List.of(new Sighting(1, "wax", 1)), MATERIALS, 1, 0.1, List.of()));
    }

    private static BeliefAnswer ask(List<Sighting> seen) {
        return Belief.of(new BeliefQuestion(seen, MATERIALS, 0.5, 0.1, List.of(3L)));
    }

    private static double chance(At at, String material) {
        return at.probabilities().getOrDefault(material, Double.NaN);
    }

    private static BeliefQuestion with(BeliefQuestion question, List<Sighting> seen) {
        return new BeliefQuestion(seen, question.materials(), question.prior(), question.change(), question.at());
    }

    private static BeliefQuestion mirrored(BeliefQuestion question) {
        List<Sighting> seen = question.observations().stream()
                .map(s -> new Sighting(-s.serial(), s.material(), s.weight()))
                .toList();
        List<Long> at = question.at().stream().map(s -> -s).toList();
        return new BeliefQuestion(seen, question.materials(), question.prior(), question.change(), at);
    }

    private static BeliefQuestion someQuestion(Random random, int n) {
        List<Sighting> seen = new ArrayList<>();
        TreeSet<Long> serials = new TreeSet<>();
        while (serials.size() < n) {
            serials.add(100L + random.nextInt(12 * n));
        }
        int favourite = random.nextInt(3);
        for (long serial : serials) {
            favourite = random.nextInt(5) == 0 ? random.nextInt(3) : favourite;
            int k = random.nextInt(6) == 0 ? random.nextInt(3) : favourite;
            seen.add(new Sighting(serial, MATERIALS.get(k), random.nextInt(1, 5) / 4.0));
        }
        List<Long> at = List.of(50L, 107L + 12L * n, serials.first(), 100L + random.nextInt(12 * n), 103L);
        return new BeliefQuestion(
                seen,
                MATERIALS,
                0.1 + random.nextDouble(),
                0.02 + 0.4 * random.nextDouble(),
                at.stream().distinct().toList());
    }

    private static DirichletEvidence evidence(Positions seen, BeliefQuestion question) {
        return new DirichletEvidence(seen, question.prior());
    }

    private static double[] atByAllPartitions(BeliefQuestion question, long serial) {
        Positions seen = new Positions(question.observations(), MATERIALS);
        double[] sums = new double[MATERIALS.size() + 1];
        EveryPartition.show(evidence(seen, question), question.change(), (bounds, weight) -> {
            sums[MATERIALS.size()] += weight;
            for (int i = 0; i + 1 < bounds.length; i++) {
                double share = shareOfSegment(seen.serials, bounds[i], bounds[i + 1], serial);
                double total = 0;
                for (int k = 0; k < MATERIALS.size(); k++) {
                    total += question.prior() + seen.count(k, bounds[i], bounds[i + 1]);
                }
                for (int k = 0; k < MATERIALS.size(); k++) {
                    sums[k] += weight * share * (question.prior() + seen.count(k, bounds[i], bounds[i + 1])) / total;
                }
            }
        });
        return Arrays.stream(sums).map(sum -> sum / sums[MATERIALS.size()]).toArray();
    }

    /** Probability that a serial belongs to this segment, the place of a change being uniform between two serials. */
    private static double shareOfSegment(long[] serials, int start, int end, long serial) {
        long first = serials[start];
        long last = serials[end - 1];
        if (serial >= first && serial <= last) {
            return 1;
        }
        if (serial < first) {
            long below = start == 0 ? Long.MIN_VALUE : serials[start - 1];
            return start == 0 ? 1 : serial <= below ? 0 : (double) (serial - below) / (first - below);
        }
        long above = end == serials.length ? Long.MAX_VALUE : serials[end];
        return end == serials.length ? 1 : serial >= above ? 0 : (double) (above - serial) / (above - last);
    }
}
