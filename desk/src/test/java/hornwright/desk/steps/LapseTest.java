package hornwright.desk.steps;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.measured.Lapse;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.NeckPoint;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A stage voids what its work can have changed, says so beforehand, and leaves the rest. */
class LapseTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    @Test
    void levelling_voids_the_gap_of_a_rim_that_had_to_be_levelled_and_of_no_other() {
        List<Reading> read = List.of(
                gap("low", "d", 0.15), gap("fine", "e", 0.03), gap("left", "f", 0.15), says("choice", "f", "leave"));
        assertThat(inWords(at(Stage.SPRINGS_SOUND, read), Stage.HOLES_LEVEL)).containsExactly("worst rim gap of D");
        assertThat(fresh(at(Stage.HOLES_LEVEL, read))).contains("fine", "left").doesNotContain("low");
    }

    @Test
    void work_on_a_rim_voids_its_gap_even_when_it_was_to_be_left() {
        List<Reading> read = List.of(gap("left", "f", 0.15), says("choice", "f", "leave"));
        PlanInputs levelled = at(Stage.HOLES_LEVEL, read)
                .withWorkDone(List.of(new WorkDone("w.1", WorkKind.HOLE_LEVELLED, "f", null)));
        assertThat(fresh(levelled)).doesNotContain("left");
    }

    @Test
    void key_fitting_leaves_a_key_that_had_no_play() {
        List<Reading> read = List.of(
                Reading.of("tight", ReadingKind.PLAY, "d", new Observed.Play(PlayGrade.NONE, PlayGrade.NONE)),
                Reading.of("loose", ReadingKind.PLAY, "e", new Observed.Play(PlayGrade.LOOSE, PlayGrade.NONE)));
        assertThat(inWords(at(Stage.SPRINGS_SOUND, read), Stage.KEYS_FITTED)).containsExactly("play of E");
        assertThat(fresh(at(Stage.KEYS_FITTED, read))).containsExactly("tight");
    }

    @Test
    void a_pad_and_cork_decided_to_be_kept_keep_their_thickness_and_a_mouthpiece_its_bore() {
        Reading foot = Reading.of("foot", ReadingKind.THICKNESS, "foot.d", Observed.Amount.mm(1.4));
        Reading other = Reading.of("other", ReadingKind.THICKNESS, "foot.e", Observed.Amount.mm(1.4));
        Reading bore = neck("bore", NeckPoint.BORE, 16.1);
        Reading tenon = neck("tenon", NeckPoint.TENON_UPPER, 27.4);
        PlanInputs kept = at(Stage.CORKED, List.of(foot, other, bore, tenon))
                .withDecisions(List.of(new Decision.Treat("foot.d", Treatment.KEEP, null, "sound")));
        assertThat(fresh(kept)).containsExactlyInAnyOrder("foot", "bore");
    }

    @Test
    void a_brace_tried_for_air_is_voided_by_body_work_alone() {
        String brace = ALTO.places().stream()
                .filter(place -> place.kind() == PlaceKind.BRACE)
                .findFirst()
                .orElseThrow()
                .id();
        Reading tried = Reading.of("brace", ReadingKind.LEAK_SITE, brace, new Observed.Says("seals"));
        Reading later = new Reading(
                "later",
                ReadingKind.LEAK_SITE,
                brace,
                "",
                new Observed.Says("seals"),
                "eye",
                "",
                "",
                null,
                Stage.BODY_STRAIGHT,
                null);
        assertThat(fresh(at(Stage.BODY_STRAIGHT, List.of(tried)))).isEmpty();
        assertThat(fresh(at(Stage.RESTED, List.of(later)))).containsExactly("later");
    }

    @Test
    void what_a_stage_is_said_to_void_is_what_counts_no_longer_once_it_is_reached() {
        List<Reading> read = List.of(
                gap("1", "d", 0.15),
                gap("2", "e", 0.03),
                Reading.of("3", ReadingKind.FRONT_HEIGHT, "cup.d", Observed.Amount.mm(5.1)),
                Reading.of("4", ReadingKind.CUP_INSIDE, "cup.d", Observed.Amount.mm(29.1)),
                neck("5", NeckPoint.TENON_UPPER, 27.4));
        for (Stage stage : Stage.values()) {
            PlanInputs before = at(Stage.ARRIVAL, read);
            assertThat(Lapse.by(before, stage)).isEqualTo(Lapse.already(before.at(stage)));
        }
    }

    private static PlanInputs at(Stage stage, List<Reading> readings) {
        return PlanInputs.of(ALTO)
                .at(stage)
                .withReadings(readings.stream()
                        .map(reading -> reading.stage() == Stage.ARRIVAL && stage == Stage.HOLES_LEVEL
                                ? fitted(reading)
                                : reading)
                        .toList());
    }

    /** Taken after the body was straight, so that only levelling can void it. */
    private static Reading fitted(Reading reading) {
        return new Reading(
                reading.id(),
                reading.kind(),
                reading.of(),
                reading.point(),
                reading.observed(),
                reading.instrument(),
                reading.raw(),
                reading.who(),
                reading.when(),
                Stage.BODY_STRAIGHT,
                reading.series());
    }

    private static List<String> inWords(PlanInputs inputs, Stage stage) {
        PlanInputs straight = inputs.withReadings(
                inputs.readings().stream().map(LapseTest::fitted).toList());
        return Lapse.by(straight, stage).stream().map(Lapse::inWords).toList();
    }

    private static List<String> fresh(PlanInputs inputs) {
        Measurements measured = Measurements.of(inputs);
        List<String> stale = measured.stale().stream().map(one -> one.reading()).toList();
        return inputs.readings().stream()
                .map(Reading::id)
                .filter(id -> !stale.contains(id))
                .toList();
    }

    private static Reading gap(String id, String hole, double mm) {
        return Reading.of(id, ReadingKind.RIM_GAP, hole, new Observed.RimGap(mm, 0.01, 4));
    }

    private static Reading says(String point, String hole, String word) {
        return new Reading(
                "choice." + hole,
                ReadingKind.RIM_CHECK,
                hole,
                point,
                new Observed.Says(word),
                "eye",
                "",
                "",
                null,
                Stage.ARRIVAL,
                null);
    }

    private static Reading neck(String id, NeckPoint point, double mm) {
        return new Reading(
                id,
                ReadingKind.NECK,
                "neck",
                point.words(),
                Observed.Amount.mm(mm),
                "micrometer",
                "",
                "",
                null,
                Stage.ARRIVAL,
                null);
    }
}
