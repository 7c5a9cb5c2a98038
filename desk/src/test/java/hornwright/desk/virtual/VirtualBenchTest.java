package hornwright.desk.virtual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Keywork;
import hornwright.bench.survey.PadClass;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.desk.virtual.PadClasses.Way;
import hornwright.desk.virtual.Survey.Length;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether the plan helps on horns whose truth is known, and whether what it states is so. Figures: docs/truth.md. */
final class VirtualBenchTest {
    /** What was tuned was tuned on seeds below this one. */
    private static final int FIRST_UNSEEN = 1001;

    private static final int LAST_UNSEEN = 2000;

    /** Of fewer numbers than this the share says nothing to a hundredth. */
    private static final int FEW = 500;

    private static final List<String> NOT_TO_THE_MARK =
            List.of("settles", "heightSettled", "ratio", "change", "contact error", "expected gap");

    private static Keywork keywork(String name) {
        return KeyworkFile.shipped("tarrant-loe-" + name).orElseThrow();
    }

    @Test
    void a_few_altos_take_fewer_heats_and_less_work_twice_than_the_usual_way() {
        Campaign campaign = Campaign.of(keywork("alto"), 1, 20);
        Count hour = campaign.planned(Length.HOUR_AS_ASKED);
        assertThat(hour.heatsAPad()).isLessThan(0.85 * campaign.usual().heatsAPad());
        assertThat(hour.reworksAHorn()).isLessThan(0.5 * campaign.usual().reworksAHorn());
        assertThat(hour.sealed()).isGreaterThan(0.99);
    }

    /**
     * An hour spent as the plan asks halves what is done twice; heats it lowers by more than a quarter, and comes within a
     * sixth of them of what knowing the truth would bring.
     */
    @Tag("deep")
    @Tag("bench")
    @ParameterizedTest
    @ValueSource(strings = {"alto", "tenor"})
    void a_thousand_horns_tell_what_the_plan_is_worth(String voice) {
        Campaign campaign = Campaign.of(keywork(voice), FIRST_UNSEEN, LAST_UNSEEN);
        campaign.print();
        Count usual = campaign.usual();
        Count hour = campaign.planned(Length.HOUR_AS_ASKED);
        assertThat(hour.heatsAPad()).isLessThan(0.75 * usual.heatsAPad());
        assertThat(hour.reworksAHorn()).isLessThan(0.5 * usual.reworksAHorn());
        assertThat(campaign.plannedLinks().contactsAHorn())
                .isLessThan(0.6 * campaign.usualLinks().contactsAHorn());
        for (Length length : Length.values()) {
            holds(campaign.coverage(length));
        }
        holds(campaign.linkCoverage());
    }

    /** Every stated interval holds the truth 93 to 97 times in 100, but for those docs/truth.md names with the reason. */
    private static void holds(Coverage coverage) {
        coverage.tallies().forEach((kind, tally) -> {
            boolean named = NOT_TO_THE_MARK.stream().anyMatch(kind::startsWith) || kind.endsWith("tried level");
            if (tally.count() < FEW) {
                return;
            }
            assertThat(tally.share()).as(kind).isBetween(named ? 0.91 : 0.93, named ? 1 : 0.97);
        });
    }

    /** Were all known that can be, the hand at the edge of the pad would still be what binds. */
    @Tag("deep")
    @Tag("bench")
    @ParameterizedTest
    @ValueSource(strings = {"alto", "tenor"})
    void the_edge_of_the_pad_is_the_limit_that_binds(String voice) {
        Limits limits = Limits.of(keywork(voice), FIRST_UNSEEN, LAST_UNSEEN);
        limits.print();
        double known = limits.count("truth known").heatsAPad();
        assertThat(known).isGreaterThan(0.5 * limits.count("the usual way").heatsAPad());
        assertThat(limits.count("truth known, edge to 0.006").heatsAPad())
                .isLessThan(limits.count("truth known, film as meant").heatsAPad())
                .isLessThan(limits.count("truth known, film even").heatsAPad())
                .isLessThan(limits.count("truth known, rims without waves").heatsAPad());
    }

    /**
     * Soft pads with an hour as asked halve the heats of the usual way with its medium pads; most of that is the pads', since
     * the usual way has it from them too.
     */
    @Tag("deep")
    @Tag("bench")
    @ParameterizedTest
    @ValueSource(strings = {"alto", "tenor"})
    void soft_pads_forgive_most_in_every_way_of_working(String voice) {
        PadClasses classes = PadClasses.of(keywork(voice), FIRST_UNSEEN, LAST_UNSEEN);
        classes.print();
        double usual = classes.count(Way.USUAL, PadClass.MEDIUM).heatsAPad();
        assertThat(classes.count(Way.HOUR, PadClass.SOFT).heatsAPad()).isLessThan(0.5 * usual);
        assertThat(classes.count(Way.USUAL, PadClass.SOFT).heatsAPad())
                .isLessThan(0.65 * usual)
                .isGreaterThan(1.5 * classes.count(Way.HOUR, PadClass.SOFT).heatsAPad());
        assertThat(classes.count(Way.HOUR, PadClass.SOFT).wholeAtOne()).isLessThan(0.8);
    }

    @Test
    void a_softer_class_takes_fewer_heats_than_a_firmer_one() {
        PadClasses classes = PadClasses.of(keywork("alto"), 1, 15);
        for (Way way : Way.values()) {
            assertThat(classes.count(way, PadClass.SOFT).heatsAPad())
                    .isLessThan(classes.count(way, PadClass.MEDIUM).heatsAPad());
            assertThat(classes.count(way, PadClass.MEDIUM).heatsAPad())
                    .isLessThan(classes.count(way, PadClass.FIRM).heatsAPad());
        }
    }

    @Test
    void a_point_that_turns_far_lifts_less_than_its_arc() {
        Turning level = new Turning(40, 0);
        assertThat(level.lift(0.2)).isCloseTo(40 * Math.sin(0.2), within(1e-12));
        Turning below = new Turning(40, 4);
        assertThat(below.rotation(below.lift(0.15))).isCloseTo(0.15, within(1e-12));
    }
}
