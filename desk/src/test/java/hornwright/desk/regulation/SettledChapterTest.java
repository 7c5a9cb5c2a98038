package hornwright.desk.regulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.material.Materials;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.settled.SettledAnswer;
import hornwright.bench.plan.settled.SettledAnswer.ContactLine;
import hornwright.bench.plan.settled.SettledAnswer.GapLine;
import hornwright.bench.plan.settled.SettledAnswer.HeightLine;
import hornwright.bench.plan.settled.SettledAnswer.VentLine;
import hornwright.bench.plan.settled.SettledChapter;
import hornwright.bench.plan.settled.SettledQuestion;
import hornwright.bench.plan.settled.SettledQuestion.Piece;
import hornwright.bench.regulation.Regulation;
import hornwright.bench.regulation.Watch;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.settling.KeySettling;
import hornwright.bench.settling.Recheck;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Treatment;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SettledChapterTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final ShopRules RULES = ShopRules.shipped();
    private static final double TIMES = RULES.value("regulation.force-times");
    private static final LocalDate LAID = LocalDate.of(2026, 3, 2);

    private static Stream<Layer> layers() {
        return Regulation.contacts(Action.asBuilt(ALTO)).stream()
                .flatMap(link -> ALTO.links().get(link).layers().stream());
    }

    private static SettledAnswer allOf(Optional<String> material, boolean fresh) {
        Map<String, Piece> pieces = new HashMap<>();
        layers().forEach(layer -> pieces.put(layer.place(), new Piece(material.orElse(layer.material()), null, fresh)));
        return SettledChapter.of(new SettledQuestion(ALTO, List.of(), pieces, RULES, Becauses.none()));
    }

    private static PlanInputs renewed(Treatment treatment) {
        List<Decision> decisions = new ArrayList<>();
        ALTO.places().forEach(place -> decisions.add(new Decision.Treat(place.id(), treatment, null, "a test")));
        return PlanInputs.of(ALTO).withDecisions(decisions);
    }

    private static SettledAnswer planned(Treatment treatment) {
        PlanInputs inputs = renewed(treatment);
        Plan plan = Planner.plan(inputs);
        return SettledChapter.of(SettledQuestion.of(inputs, plan));
    }

    /** Second method: the whole mechanism, one press at a time, every contact thinner by the printed loss. */
    @Test
    void each_effect_that_is_printed_equals_a_run_of_the_engine_with_the_packed_thicknesses() {
        SettledAnswer answer = allOf(Optional.empty(), true);
        VirtualBench set = VirtualBench.asBuilt(ALTO);
        VirtualBench packed = set;
        for (ContactLine line : answer.contacts()) {
            packed = packed.wrongBy(line.link(), -line.loses().value());
        }
        for (GapLine line : answer.gaps()) {
            double after = packed.gapMm(line.watch(), TIMES);
            assertThat(line.gap().value()).as(line.watch().toString()).isCloseTo(after, within(1e-6));
            assertThat(line.opens().value()).isCloseTo(after - set.gapMm(line.watch(), TIMES), within(1e-6));
            assertThat(line.shut()).isEqualTo(after <= RULES.value("regulation.closed_mm"));
        }
        assertThat(answer.gaps()).extracting(GapLine::watch).containsExactlyElementsOf(Watch.cups(ALTO));
        assertThat(answer.open()).isNotEmpty();
    }

    /** Second method: lost motion of the contact, carried to the vent by the arms; what gives under the thumb is left out. */
    @Test
    void an_octave_vent_opens_less_by_what_its_contact_loses_times_its_arms() {
        SettledAnswer answer = planned(Treatment.REPLACE_LIKE);
        assertThat(answer.vents()).extracting(VentLine::cup).containsExactly("cup.neck-octave", "cup.body-octave");
        for (VentLine line : answer.vents()) {
            Link contact = ALTO.links().get("link.octave-thumb-to-" + line.cup().replaceFirst("^cup\\.", ""));
            double lost = answer.contacts().stream()
                    .filter(one -> one.link().equals(contact.id()))
                    .findFirst()
                    .orElseThrow()
                    .loses()
                    .value();
            double ratio = ALTO.cups().get(line.cup()).armMm() / contact.followerArmMm();
            assertThat(line.less().value()).as(line.state()).isCloseTo(ratio * lost, within(0.1 * ratio * lost));
            assertThat(line.opens().value()).isPositive();
            assertThat(answer.becauses().leaves(line.less().because())).isNotEmpty();
        }
    }

    @Test
    void an_octave_mechanism_with_nothing_new_in_it_moves_nothing() {
        assertThat(planned(Treatment.KEEP).vents()).isEmpty();
    }

    /** Second method: the springs in series of the settling package. */
    @Test
    void a_contact_loses_what_its_layers_lose_as_springs_in_series() {
        Set<String> fresh = layers().map(Layer::place).collect(Collectors.toSet());
        KeySettling settling = new KeySettling(ALTO, Map.of(), fresh, Materials.of(RULES));
        for (ContactLine line : allOf(Optional.empty(), true).contacts()) {
            Link link = ALTO.links().get(line.link());
            assertThat(line.loses().value()).isCloseTo(settling.link(link).lossMm(), within(1e-12));
            assertThat(line.loses().u())
                    .isGreaterThanOrEqualTo(settling.link(link).u());
        }
    }

    /** Common practice. */
    @Test
    void soft_felt_opens_the_linked_cups_further_than_cork() {
        SettledAnswer felt = allOf(Optional.of("woven wool felt"), true);
        SettledAnswer cork = allOf(Optional.of("natural cork"), true);
        for (int i = 0; i < felt.contacts().size(); i++) {
            assertThat(felt.contacts().get(i).loses().value())
                    .isGreaterThan(cork.contacts().get(i).loses().value());
        }
        assertThat(felt.widest().orElseThrow().gap().value())
                .isGreaterThan(cork.widest().orElseThrow().gap().value());
    }

    @Test
    void where_nothing_new_is_laid_nothing_moves() {
        assertThat(allOf(Optional.empty(), false).moves()).isFalse();
        assertThat(planned(Treatment.KEEP).moves()).isFalse();
        assertThat(planned(Treatment.KEEP).gaps()).isEmpty();
        assertThat(allOf(Optional.of("PTFE"), true).moves()).isFalse();
    }

    @Test
    void one_new_contact_moves_only_what_its_fingers_work_through_it() {
        Layer layer = ALTO.links().get("link.d-to-f-sharp").layers().getFirst();
        SettledAnswer answer = SettledChapter.of(new SettledQuestion(
                ALTO,
                List.of(),
                Map.of(layer.place(), new Piece("woven wool felt", null, true)),
                RULES,
                Becauses.none()));
        assertThat(answer.contacts()).extracting(ContactLine::link).containsExactly("link.d-to-f-sharp");
        assertThat(answer.gaps())
                .isNotEmpty()
                .allMatch(line -> line.watch().press().equals("d"));
    }

    @Test
    void a_cup_whose_stop_is_new_stands_higher_by_what_the_stop_loses_times_the_ratio() {
        SettledAnswer answer = planned(Treatment.REPLACE_LIKE);
        assertThat(answer.heights()).hasSizeGreaterThan(10);
        for (HeightLine line : answer.heights()) {
            PlannedNumber rises = line.rises();
            assertThat(rises.value()).isPositive();
            assertThat(rises.u()).isPositive();
            assertThat(line.settled().value() - line.set().value()).isCloseTo(rises.value(), within(1e-9));
        }
    }

    @Test
    void every_number_can_be_followed_down_to_rules_and_the_pattern() {
        SettledAnswer answer = planned(Treatment.REPLACE_LIKE);
        assertThat(answer.contacts()).isNotEmpty();
        Stream.of(
                        answer.contacts().stream().map(ContactLine::loses),
                        answer.gaps().stream().map(GapLine::opens),
                        answer.gaps().stream().map(GapLine::gap),
                        answer.heights().stream().map(HeightLine::rises),
                        Stream.of(answer.over(), answer.days()))
                .flatMap(numbers -> numbers)
                .forEach(number ->
                        assertThat(answer.becauses().leaves(number.because())).isNotEmpty());
    }

    @Test
    void as_much_is_over_at_the_second_look_as_the_recheck_says() {
        Link link = ALTO.links().get("link.d-to-f-sharp");
        Set<String> fresh = link.layers().stream().map(Layer::place).collect(Collectors.toSet());
        Recheck recheck = new KeySettling(ALTO, Map.of(), fresh, Materials.of(RULES)).lostMotion(link, LAID);
        assertThat(allOf(Optional.empty(), true).over().value())
                .isCloseTo(100 * recheck.byThenMm() / recheck.inTheEndMm(), within(1e-9));
    }
}
