package hornwright.desk.feel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.bounce.KeyBounce;
import hornwright.bench.bounce.OpeningKey;
import hornwright.bench.horn.Keywork;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Sheet;
import hornwright.bench.plan.bounce.BounceChapter;
import hornwright.bench.plan.bounce.BounceQuestion;
import hornwright.bench.plan.bounce.Bounced;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.action.Action;
import hornwright.engines.action.ActionResult;
import hornwright.engines.action.Trace;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class BounceChapterTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final Materials TYPICAL = Materials.of(ShopRules.shipped());
    private static final BounceQuestion BUILT = new BounceQuestion(ALTO, Map.of(), ShopRules.shipped());

    @Test
    void every_key_a_spring_opens_is_rated_and_has_its_curve() {
        BounceChapter.Answer answer = BounceChapter.of(BUILT);
        assertThat(answer.keys()).hasSize((int) ALTO.keys().stream()
                .filter(key -> OpeningKey.of(ALTO, key, TYPICAL).isPresent())
                .count());
        assertThat(answer.keys()).allSatisfy(key -> {
            assertThat(key.opening().u()).as(key.key()).isPositive();
            assertThat(key.settled().u()).as(key.key()).isPositive();
            assertThat(answer.becauses().leaves(key.rebound().because())).hasSizeGreaterThan(4);
            List<Trace.Point> points = key.trace().points();
            assertThat(1e3 * points.getLast().time())
                    .isGreaterThan(key.opening().value());
        });
    }

    @Test
    void what_the_maker_fitted_comes_first() {
        List<Bounced> beside =
                BounceChapter.sideBySide(BUILT, ALTO.keys().get("e")).keys();
        assertThat(beside).hasSizeGreaterThan(6);
        assertThat(beside.getFirst().period()).isTrue();
        assertThat(beside.getFirst().what()).startsWith("as built");
        assertThat(beside.subList(1, beside.size())).noneMatch(Bounced::period);
        assertThat(beside).extracting(Bounced::what).doesNotHaveDuplicates();
    }

    @Test
    void every_stated_effect_of_another_bumper_is_the_engine_run_again() {
        OpeningKey e = OpeningKey.of(ALTO, ALTO.keys().get("e"), TYPICAL).orElseThrow();
        double thickness = e.cushion().thicknessMm();
        int compared = 0;
        for (Bounced other :
                BounceChapter.sideBySide(BUILT, ALTO.keys().get("e")).keys()) {
            if (other.what().endsWith(" under the foot")) {
                String material = other.what().replace(" under the foot", "");
                ActionResult again = Action.reckon(
                        e.on(List.of(new Sheet(material, thickness))).asEngineWantsIt(TYPICAL));
                assertThat(other.opening().value()).isEqualTo(1e3 * Objects.requireNonNull(again.opening()));
                assertThat(other.settled().value()).isEqualTo(1e3 * Objects.requireNonNull(again.settled()));
                double rebound = again.rebounds().isEmpty()
                        ? 0
                        : again.rebounds().getFirst().height();
                assertThat(other.rebound().value()).isCloseTo(1e3 * rebound, within(1e-12));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(3);
    }

    @Test
    void what_the_plan_lays_under_a_foot_is_what_the_key_lands_on() {
        String place = ALTO.keys().get("a").stop().layers().getFirst().place();
        BounceQuestion felt =
                new BounceQuestion(ALTO, Map.of(place, new Sheet("woven wool felt", 2)), ShopRules.shipped());
        double planned = BounceChapter.of(felt).of("a").orElseThrow().rebound().value();
        OpeningKey a = OpeningKey.of(ALTO, ALTO.keys().get("a"), TYPICAL)
                .orElseThrow()
                .on(List.of(new Sheet("woven wool felt", 2)));
        assertThat(planned)
                .isEqualTo(KeyBounce.of(a, TYPICAL).orElseThrow().rebound().value());
        assertThat(planned)
                .isLessThan(
                        BounceChapter.of(BUILT).of("a").orElseThrow().rebound().value());
    }

    /** Common practice. */
    @Test
    void a_heavier_resonator_bounces_more_than_a_bare_pad() {
        List<Bounced> beside =
                BounceChapter.sideBySide(BUILT, ALTO.keys().get("f")).keys();
        assertThat(rebound(beside, "heavy brass")).isGreaterThan(rebound(beside, "bare pad"));
    }

    private static double rebound(List<Bounced> all, String start) {
        return all.stream()
                .filter(one -> one.what().startsWith(start))
                .findFirst()
                .orElseThrow()
                .rebound()
                .value();
    }
}
