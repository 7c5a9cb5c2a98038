package hornwright.desk.instead;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.bounce.KeyBounce;
import hornwright.bench.bounce.OpeningKey;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Owner;
import hornwright.bench.material.Cushion;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Sheet;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.bounce.BounceQuestion;
import hornwright.bench.plan.instead.Belongs;
import hornwright.bench.plan.instead.InsteadAnswer;
import hornwright.bench.plan.instead.InsteadChapter;
import hornwright.bench.plan.instead.InsteadQuestion;
import hornwright.bench.plan.instead.Substitute;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.settling.KeySettling;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Treatment;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class InsteadChapterTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final PlanInputs INPUTS = PlanInputs.of(ALTO);
    private static final Materials TYPICAL = Materials.of(ShopRules.shipped());

    private static InsteadAnswer at(String place) {
        return InsteadChapter.of(new InsteadQuestion(INPUTS, place)).orElseThrow();
    }

    private static PlanInputs with(String place, String material, Treatment treatment) {
        return INPUTS.withDecisions(List.of(new Decision.Treat(place, treatment, material, "tried")));
    }

    private static double settled(Plan plan, Key key) {
        List<Double> found = new ArrayList<>();
        ALTO.cupOf(key)
                .ifPresent(cup -> ALTO.placesOf(new Owner.OfCup(cup.id()))
                        .forEach(place -> plan.number(place.id(), NumberName.HEIGHT_SETTLED)
                                .ifPresent(number -> found.add(number.value()))));
        return found.isEmpty() ? Double.NaN : found.getFirst();
    }

    @Test
    void every_stated_height_is_the_difference_of_two_plans_made_again() {
        int compared = 0;
        for (Key key : ALTO.keys()) {
            for (Layer layer : key.stop().layers()) {
                InsteadAnswer answer = at(layer.place());
                Plan built = Planner.plan(with(layer.place(), answer.built().material(), Treatment.REPLACE_LIKE));
                for (Substitute other : answer.others()) {
                    if (other.height() != null) {
                        Plan again = Planner.plan(with(layer.place(), other.material(), Treatment.SUBSTITUTE));
                        assertThat(other.height().value())
                                .as(layer.place() + " of " + other.material())
                                .isCloseTo(settled(again, key) - settled(built, key), within(1e-9));
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(60);
    }

    @Test
    void every_stated_bounce_and_give_is_the_engine_run_again() {
        int compared = 0;
        for (Key key : ALTO.keys()) {
            for (Layer layer : key.stop().layers()) {
                for (Substitute other : at(layer.place()).others()) {
                    double area =
                            KeySettling.area(key.stop(), ShopRules.shipped()).value();
                    Cushion alone = new Cushion(
                            List.of(new Sheet(
                                    other.material(), other.thickness().value())),
                            area);
                    assertThat(other.gives().value()).isCloseTo(alone.compressionMm(1, TYPICAL), within(1e-12));
                    if (other.bounce() == null) {
                        continue;
                    }
                    PlanInputs tried = with(layer.place(), other.material(), Treatment.SUBSTITUTE);
                    List<Sheet> sheets =
                            BounceQuestion.of(tried, Planner.plan(tried)).sheets(key);
                    OpeningKey on =
                            OpeningKey.of(ALTO, key, TYPICAL).orElseThrow().on(sheets);
                    KeyBounce again = KeyBounce.of(on, TYPICAL).orElseThrow();
                    assertThat(other.bounce().rebound().value())
                            .isEqualTo(again.rebound().value());
                    assertThat(other.bounce().settled().value())
                            .isEqualTo(again.settled().value());
                    assertThat(sheets).anyMatch(sheet -> sheet.material().equals(other.material()));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(60);
    }

    @Test
    void what_such_horns_had_comes_first_and_what_later_repairers_use_last() {
        PlanInputs known = new PlanInputs(
                ALTO,
                41_207L,
                null,
                INPUTS.stage(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                INPUTS.chronicle(),
                ArchiveFile.demo().asBuilt(ALTO.voice(), 41_207),
                INPUTS.stock(),
                INPUTS.rules());
        InsteadAnswer foot =
                InsteadChapter.of(new InsteadQuestion(known, "foot.d")).orElseThrow();
        assertThat(foot.built().belongs()).isEqualTo(Belongs.BUILT);
        assertThat(foot.others()).extracting(Substitute::belongs).isSorted().contains(Belongs.SEEN, Belongs.LATER);
        assertThat(foot.others())
                .extracting(Substitute::material)
                .doesNotContain(foot.built().material(), "unknown");
        assertThat(foot.others().getLast().belongs()).isEqualTo(Belongs.LATER);
    }

    @Test
    void every_number_explains_itself_and_carries_its_doubt() {
        InsteadAnswer foot = at("foot.d");
        for (Substitute other : foot.others()) {
            for (var number : List.of(
                    other.thickness(),
                    other.stiffness(),
                    other.mass(),
                    other.gives(),
                    Objects.requireNonNull(other.height()))) {
                assertThat(foot.becauses().find(number.because()))
                        .as(number.because())
                        .isPresent();
                assertThat(number.u()).as(number.because()).isPositive();
            }
            assertThat(foot.becauses()
                            .leaves(Objects.requireNonNull(other.bounce())
                                    .rebound()
                                    .because()))
                    .hasSizeGreaterThan(4);
        }
    }

    @Test
    void a_link_has_no_height_and_a_place_without_a_piece_has_no_answer() {
        String link = ALTO.links().list().stream()
                .flatMap(one -> one.layers().stream())
                .map(Layer::place)
                .findFirst()
                .orElseThrow();
        assertThat(at(link).others()).isNotEmpty().allMatch(one -> one.height() == null && one.bounce() == null);
        assertThat(InsteadChapter.of(new InsteadQuestion(INPUTS, "pad.d"))).isEmpty();
    }
}
