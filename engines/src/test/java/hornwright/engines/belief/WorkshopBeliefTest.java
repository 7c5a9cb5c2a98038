package hornwright.engines.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.belief.WorkshopAnswer.At;
import hornwright.engines.belief.WorkshopAnswer.Spell;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a works did along its serials: against every course one after another, against segmentations, and by its symmetries. */
class WorkshopBeliefTest {
    private static final Workshop WORKS = new Workshop(List.of(0.03), 0.04, 0.1);
    private static final List<String> TWO = List.of("cork", "felt");
    private static final List<String> THREE = List.of("cork", "felt", "leather");

    private static List<Sighting> line(String letters, double weight) {
        List<Sighting> line = new ArrayList<>();
        for (int i = 0; i < letters.length(); i++) {
            String material = THREE.get("cfl".indexOf(letters.charAt(i)));
            line.add(new Sighting(100 + 10L * i, material, weight));
        }
        return line;
    }

    private static List<Sighting> drawn(Random random, int horns, List<String> materials) {
        List<Sighting> line = new ArrayList<>();
        for (int i = 0; i < horns; i++) {
            long serial = 100L + random.nextInt(3 * horns);
            line.add(new Sighting(serial, materials.get(random.nextInt(materials.size())), random.nextDouble()));
        }
        return line;
    }

    private static double of(Map<String, Double> map, String material) {
        return map.getOrDefault(material, 0.0);
    }

    private static WorkshopAnswer ask(List<Sighting> line, List<String> materials, Workshop works, Long... at) {
        return WorkshopBelief.of(new WorkshopQuestion(line, materials, works, List.of(at)));
    }

    @Test
    void every_answer_agrees_with_the_sum_over_all_courses() {
        Random random = new Random(5);
        for (int trial = 0; trial < 12; trial++) {
            List<Sighting> line = drawn(random, 5, TWO);
            Workshop works =
                    new Workshop(List.of(0.01 + 0.3 * random.nextDouble()), random.nextDouble(), random.nextDouble());
            compare(new Positions(line, TWO), line, works);
        }
    }

    private static void compare(Positions seen, List<Sighting> line, Workshop works) {
        Laws laws = new Laws(2, works.mixing());
        Fit fit = new Fit(seen, laws, works.errors().getFirst());
        int n = seen.size();
        double[] total = new double[1];
        List<Map<String, Double>> used = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            used.add(new HashMap<>(Map.of("c", 0.0, "f", 0.0, "cf", 0.0)));
        }
        double[] cork = new double[n];
        double[] own = new double[n];
        double[] changed = new double[n];
        new EveryCourse(laws, fit, works.change()).show((course, weight) -> {
            total[0] += weight;
            for (int i = 0; i < n; i++) {
                double share = laws.shares[0][course[i]];
                used.get(i).merge(share == 1 ? "c" : share == 0 ? "f" : "cf", weight, Double::sum);
                cork[i] += weight * laws.shares[0][course[i]];
                changed[i] += i > 0 && course[i] != course[i - 1] ? weight : 0;
                double[] one = new double[laws.ways()];
                one[course[i]] = 1;
                own[i] += weight * fit.ofHorn(i, one)[0];
            }
        });
        Long[] at = Arrays.stream(seen.serials).boxed().toArray(Long[]::new);
        WorkshopAnswer answer = ask(line, TWO, works, at);
        assertThat(answer.logEvidence()).isCloseTo(Math.log(total[0]), within(1e-10));
        for (int i = 0; i < n; i++) {
            At here = answer.at().get(i);
            assertThat(of(here.shares(), "cork")).isCloseTo(cork[i] / total[0], within(1e-11));
            assertThat(of(here.probabilities(), "cork")).isCloseTo(own[i] / total[0], within(1e-11));
            if (i > 0) {
                assertThat(answer.changeAfter().get(i - 1).probability())
                        .isCloseTo(changed[i] / total[0], within(1e-11));
            }
        }
        for (Spell spell : answer.best()) {
            for (int i = Arrays.binarySearch(seen.serials, spell.from()); i < n && seen.serials[i] <= spell.to(); i++) {
                String materials = spell.shares().entrySet().stream()
                        .filter(share -> share.getValue() > 0)
                        .map(share -> share.getKey().substring(0, 1))
                        .sorted()
                        .collect(Collectors.joining());
                double[] sets = {of(used.get(i), "c"), of(used.get(i), "f"), of(used.get(i), "cf")};
                assertThat(of(used.get(i), materials))
                        .isCloseTo(Arrays.stream(sets).max().orElseThrow(), within(1e-9 * total[0]));
            }
        }
    }

    @Test
    void the_recursion_over_segmentations_finds_the_same_with_this_evidence_behind_it() {
        Random random = new Random(6);
        for (int trial = 0; trial < 20; trial++) {
            List<Sighting> line = drawn(random, 30, THREE);
            Positions seen = new Positions(line, THREE);
            Laws laws = new Laws(3, WORKS.mixing());
            WorkshopEvidence evidence = new WorkshopEvidence(
                    laws, new Fit(seen, laws, WORKS.errors().getFirst()));
            Segmentations all = new Segmentations(evidence, WORKS.change());
            double[][] shares = new double[seen.size()][];
            Arrays.setAll(shares, i -> new double[3]);
            all.walk((start, end, probability) -> {
                double[] joint = evidence.joint(start, end);
                double sum = Arrays.stream(joint).sum();
                double[] mean = laws.sharesUnder(joint);
                for (int i = start; i < end; i++) {
                    for (int k = 0; k < 3; k++) {
                        shares[i][k] += probability * mean[k] / sum;
                    }
                }
            });
            WorkshopAnswer answer =
                    ask(line, THREE, WORKS, Arrays.stream(seen.serials).boxed().toArray(Long[]::new));
            assertThat(answer.logEvidence()).isCloseTo(all.logEvidence(), within(1e-9));
            for (int i = 0; i < seen.size(); i++) {
                for (int k = 0; k < 3; k++) {
                    assertThat(of(answer.at().get(i).shares(), THREE.get(k))).isCloseTo(shares[i][k], within(1e-10));
                }
            }
        }
    }

    @Test
    void rates_of_error_are_weighed_by_how_well_each_explains_what_was_seen() {
        Random random = new Random(12);
        for (int trial = 0; trial < 50; trial++) {
            List<Sighting> line = drawn(random, 20, THREE);
            long serial = 100L + random.nextInt(60);
            WorkshopAnswer low = ask(line, THREE, new Workshop(List.of(0.01), 0.1, 0.2), serial);
            WorkshopAnswer high = ask(line, THREE, new Workshop(List.of(0.2), 0.1, 0.2), serial);
            WorkshopAnswer both = ask(line, THREE, new Workshop(List.of(0.01, 0.2), 0.1, 0.2), serial);
            double ofLow = 1 / (1 + Math.exp(high.logEvidence() - low.logEvidence()));
            for (String material : THREE) {
                assertThat(of(both.at().getFirst().probabilities(), material))
                        .isCloseTo(
                                ofLow * of(low.at().getFirst().probabilities(), material)
                                        + (1 - ofLow) * of(high.at().getFirst().probabilities(), material),
                                within(1e-10));
            }
            for (int i = 0; i < both.changeAfter().size(); i++) {
                assertThat(both.changeAfter().get(i).probability())
                        .isCloseTo(
                                ofLow * low.changeAfter().get(i).probability()
                                        + (1 - ofLow)
                                                * high.changeAfter().get(i).probability(),
                                within(1e-10));
            }
            assertThat(Math.exp(both.logEvidence()))
                    .isCloseTo((Math.exp(low.logEvidence()) + Math.exp(high.logEvidence())) / 2, within(1e-12));
        }
    }

    @Test
    void horns_that_alternate_speak_of_a_habit_and_a_single_odd_one_of_an_error() {
        WorkshopAnswer habit = ask(line("ccccccccccfcfcfcffcfcfcffcffffffffff", 1), TWO, WORKS, 285L);
        assertThat(habit.best()).hasSize(3).extracting(Spell::isMixed).containsExactly(false, true, false);
        assertThat(habit.at().getFirst().mixed()).isGreaterThan(0.9);
        WorkshopAnswer error = ask(line("cccccccccccccccccfcccccccccccccccccc", 1), TWO, WORKS, 285L);
        assertThat(error.best()).singleElement().satisfies(spell -> {
            assertThat(spell.isMixed()).isFalse();
            assertThat(spell.mixed()).isLessThan(0.3);
        });
        assertThat(of(error.at().getFirst().probabilities(), "cork")).isGreaterThan(0.95);
    }

    @Test
    void a_horn_seen_in_a_time_of_mixing_had_what_it_shows_and_its_neighbour_may_not() {
        WorkshopAnswer answer = ask(line("cfcfcfcfcfcfcfcfcfcf", 1), TWO, WORKS, 110L, 115L);
        assertThat(of(answer.at().get(0).probabilities(), "felt")).isGreaterThan(0.9);
        assertThat(of(answer.at().get(0).shares(), "felt")).isBetween(0.35, 0.65);
        assertThat(of(answer.at().get(1).probabilities(), "felt")).isBetween(0.35, 0.65);
    }

    @Test
    void without_mixing_no_stretch_is_mixed_and_without_change_there_is_one() {
        Random random = new Random(7);
        for (int trial = 0; trial < 50; trial++) {
            List<Sighting> line = drawn(random, 25, THREE);
            WorkshopAnswer pure = ask(line, THREE, new Workshop(List.of(0.1), 0.1, 0), 120L);
            assertThat(pure.best()).noneMatch(Spell::isMixed);
            assertThat(pure.at().getFirst().mixed()).isZero();
            WorkshopAnswer still = ask(line, THREE, new Workshop(List.of(0.1), 0, 0.1));
            assertThat(still.best()).hasSize(1);
            assertThat(still.changeOver()).isEmpty();
        }
    }

    @Test
    void chances_sum_to_one_and_the_stretches_follow_each_other() {
        Random random = new Random(8);
        for (int trial = 0; trial < 100; trial++) {
            List<Sighting> line = drawn(random, 40, THREE);
            WorkshopAnswer answer = ask(line, THREE, WORKS, 90L, 130L, 151L, 400L);
            for (At at : answer.at()) {
                assertThat(sum(at.probabilities())).isCloseTo(1, within(1e-12));
                assertThat(sum(at.shares())).isCloseTo(1, within(1e-12));
                assertThat(at.mixed()).isBetween(0.0, 1 + 1e-12);
            }
            assertThat(answer.changeOver()).hasSize(answer.best().size() - 1);
            for (int i = 0; i + 1 < answer.best().size(); i++) {
                assertThat(answer.best().get(i).to())
                        .isLessThan(answer.best().get(i + 1).from());
                assertThat(answer.changeOver().get(i).from())
                        .isLessThanOrEqualTo(answer.changeOver().get(i).to());
            }
        }
    }

    private static double sum(Map<String, Double> chances) {
        return chances.values().stream().mapToDouble(p -> p).sum();
    }

    @Test
    void the_order_of_entry_and_the_names_do_not_matter_and_a_line_read_backwards_is_mirrored() {
        Random random = new Random(9);
        for (int trial = 0; trial < 50; trial++) {
            List<Sighting> line = drawn(random, 30, THREE);
            At plain = ask(line, THREE, WORKS, 130L).at().getFirst();
            List<Sighting> shuffled = new ArrayList<>(line);
            Collections.shuffle(shuffled, random);
            At other = ask(shuffled, THREE.reversed(), WORKS, 130L).at().getFirst();
            List<Sighting> mirrored = line.stream()
                    .map(s -> new Sighting(1000 - s.serial(), s.material(), s.weight()))
                    .toList();
            At mirror = ask(mirrored, THREE, WORKS, 870L).at().getFirst();
            for (String material : THREE) {
                double p = of(plain.probabilities(), material);
                assertThat(of(other.probabilities(), material)).isCloseTo(p, within(1e-9));
                assertThat(of(mirror.probabilities(), material)).isCloseTo(p, within(1e-9));
            }
        }
    }

    @Test
    void one_more_look_at_a_material_never_makes_it_less_likely_there() {
        Random random = new Random(10);
        for (int trial = 0; trial < 200; trial++) {
            List<Sighting> line = drawn(random, 15, TWO);
            long serial = 100L + random.nextInt(45);
            double before = of(ask(line, TWO, WORKS, serial).at().getFirst().probabilities(), "felt");
            List<Sighting> more = new ArrayList<>(line);
            more.add(new Sighting(serial, "felt", 0.75));
            double after = of(ask(more, TWO, WORKS, serial).at().getFirst().probabilities(), "felt");
            assertThat(after).isGreaterThanOrEqualTo(before - 1e-12);
        }
    }

    @Test
    void an_interval_holds_a_change_as_often_as_it_says_in_lines_drawn_from_the_model_itself() {
        Random random = new Random(11);
        int intervals = 0;
        int held = 0;
        for (int trial = 0; trial < 1500; trial++) {
            List<Sighting> line = new ArrayList<>();
            List<Long> changes = new ArrayList<>();
            int now = random.nextInt(3);
            long serial = 1000;
            for (int i = 0; i < 40; i++) {
                long step = 1L + random.nextInt(200);
                if (i > 0 && random.nextDouble() < 0.05) {
                    int then = random.nextInt(3);
                    if (then != now) {
                        changes.add(serial + 1 + random.nextLong(step));
                    }
                    now = then;
                }
                serial += step;
                boolean wrong = random.nextDouble() < 0.05;
                line.add(new Sighting(serial, THREE.get(wrong ? (now + 1 + random.nextInt(2)) % 3 : now), 1));
            }
            for (var over :
                    ask(line, THREE, new Workshop(List.of(0.05), 0.05, 0)).changeOver()) {
                if (over.probability() > 0.949) {
                    intervals++;
                    held += changes.stream().anyMatch(at -> at > over.from() && at <= over.to()) ? 1 : 0;
                }
            }
        }
        assertThat(intervals).isGreaterThan(1000);
        assertThat(held / (double) intervals).isBetween(0.93, 0.97);
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Workshop(List.of(0.0), 0.1, 0.1)).hasMessageContaining("error");
        assertThatThrownBy(() -> new Workshop(List.of(), 0.1, 0.1)).hasMessageContaining("error");
        assertThatThrownBy(() -> new Workshop(List.of(0.1), -0.1, 0.1)).hasMessageContaining("change");
        assertThatThrownBy(() -> new Workshop(List.of(0.1), 0.1, 1.1)).hasMessageContaining("mixing");
        assertThatThrownBy(() -> new WorkshopQuestion(line("cf", 1), List.of("cork"), WORKS, List.of()))
                .hasMessageContaining("felt");
        assertThatThrownBy(() -> new WorkshopQuestion(List.of(), List.of("cork", "cork"), WORKS, List.of()))
                .hasMessageContaining("twice");
    }

    @Test
    void where_nothing_was_seen_everything_listed_is_as_likely() {
        At at = ask(List.of(), THREE, WORKS, 5L).at().getFirst();
        assertThat(of(at.probabilities(), "felt")).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(at.mixed()).isCloseTo(WORKS.mixing(), within(1e-12));
        assertThat(at.standing()).isEqualTo(Standing.EXTRAPOLATED);
    }
}
