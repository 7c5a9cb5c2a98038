package hornwright.bench.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.horn.Articulation;
import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.OctaveLevers;
import hornwright.bench.horn.Pieces;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.Voice;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class JobFoldTest {
    private static final Instant AT = Instant.parse("2026-03-02T09:00:00Z");
    private static final Switches SWITCHES = new Switches(
            true,
            false,
            true,
            false,
            BellKeySide.RIGHT,
            Pieces.TWO_PIECE,
            Articulation.ARTICULATED,
            Articulation.ARTICULATED,
            OctaveLevers.ONE,
            Pieces.TWO_PIECE);
    private static final Identity ALTO =
            new Identity("tarrant-loe-alto", "Tarrant & Loe", Voice.ALTO, 41207L, SWITCHES);
    private static final JobOpened OPENED = new JobOpened(ALTO, new Arrival("p-2", "low notes gurgle"));

    @Test
    void there_is_no_job_before_it_is_opened() {
        assertThat(fold()).isEmpty();
        assertThatThrownBy(() -> fold(new NoteWritten("job", "too early"))).hasMessageContaining("before it is opened");
    }

    @Test
    void an_opened_job_has_what_came_through_the_door_and_nothing_else() {
        assertThat(fold(OPENED)).contains(Job.opened("q-0007", AT, ALTO, OPENED.arrival()));
        assertThat(job(OPENED).title()).isEqualTo("alto 41207 by Tarrant & Loe");
        assertThat(job(OPENED).agreedUse()).isEmpty();
    }

    @Test
    void a_reading_of_the_same_point_takes_the_place_of_the_former_one() {
        Job job = job(OPENED, height("r.1", "cup.d", 5.1, Stage.ARRIVAL), height("r.2", "cup.d", 5.3, Stage.ARRIVAL));
        assertThat(job.readings().current()).extracting(Reading::id).containsExactly("r.2");
        assertThat(job.readings().former()).isEmpty();
    }

    @Test
    void a_reading_of_a_later_stage_leaves_the_earlier_one_to_compare_with() {
        Job job =
                job(OPENED, height("r.1", "cup.d", 5.1, Stage.ARRIVAL), height("r.2", "cup.d", 6.0, Stage.HEIGHTS_SET));
        assertThat(job.readings().current()).extracting(Reading::id).containsExactly("r.2");
        assertThat(job.readings().at(Stage.ARRIVAL)).extracting(Reading::id).containsExactly("r.1");
    }

    @Test
    void repeats_of_one_series_stand_together_until_a_single_reading_comes() {
        Job job = job(OPENED, repeat("r.1", 5.1), repeat("r.2", 5.2));
        assertThat(job.readings().current()).hasSize(2);
        assertThat(job(OPENED, repeat("r.1", 5.1), repeat("r.2", 5.2), height("r.3", "cup.d", 5.0, Stage.ARRIVAL))
                        .readings()
                        .current())
                .extracting(Reading::id)
                .containsExactly("r.3");
    }

    @Test
    void a_withdrawn_reading_does_not_count_and_its_undoing_brings_it_back() {
        JobEdit reading = height("r.1", "cup.d", 5.1, Stage.ARRIVAL);
        ReadingWithdrawn withdrawn = new ReadingWithdrawn("r.1", "wedge slipped");
        assertThat(job(OPENED, reading, withdrawn).readings().current()).isEmpty();
        assertThat(job(OPENED, reading, withdrawn, new Undone(3)).readings().current())
                .hasSize(1);
    }

    @Test
    void one_edit_paints_many_places_and_one_undo_takes_it_all_off() {
        MaterialsFound painted = new MaterialsFound(List.of(cork("foot.d"), cork("foot.e"), cork("foot.f")), List.of());
        assertThat(job(OPENED, painted).findings().byPlace()).containsOnlyKeys("foot.d", "foot.e", "foot.f");
        assertThat(job(OPENED, painted, new Undone(2)).findings()).isEqualTo(Findings.NONE);
    }

    @Test
    void a_decision_stands_until_another_on_the_same_thing_or_until_it_is_taken_back() {
        Decided keep = new Decided(new Decision.Treat("pad.f", Treatment.KEEP, null, "sound"));
        Decided replace = new Decided(new Decision.Treat("pad.f", Treatment.REPLACE_LIKE, null, "owner asked"));
        Decided use = new Decided(new Decision.Use(AgreedUse.WORKING, "plays weekly"));
        Job job = job(OPENED, keep, use, replace);
        assertThat(job.decisions()).containsOnlyKeys("treat.pad.f", "use").containsValue(replace.decision());
        assertThat(job.agreedUse()).contains(AgreedUse.WORKING);
        assertThat(job(OPENED, use, new DecisionDropped("use")).agreedUse()).isEmpty();
    }

    @Test
    void an_import_is_one_edit_and_files_the_job_under_its_own_id() {
        Job elsewhere = job(OPENED, height("r.1", "cup.d", 5.1, Stage.ARRIVAL)).as("q-0001");
        assertThat(job(new JobImported(elsewhere))).isEqualTo(elsewhere.as("q-0007"));
    }

    @Test
    void an_edit_cannot_be_undone_beneath_a_later_one_of_the_same_field() {
        History<Optional<Job>> history = history(List.of(
                OPENED,
                height("r.1", "cup.d", 5.1, Stage.ARRIVAL),
                height("r.2", "cup.e", 5.0, Stage.ARRIVAL),
                height("r.3", "cup.d", 5.2, Stage.ARRIVAL),
                new ReadingWithdrawn("r.2", "read wrong")));
        assertThat(history.whyNotUndo(1)).isPresent();
        assertThat(history.whyNotUndo(2))
                .contains("Edit 4 stands on it (front height of cup.d: 5.2 mm); undo that one first.");
        assertThat(history.whyNotUndo(3))
                .hasValueSatisfying(why -> assertThat(why).contains("Edit 5"));
        assertThat(history.whyNotUndo(4)).isEmpty();
    }

    @Test
    void folding_all_at_once_is_advancing_one_by_one() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            List<JobEdit> edits = randomEdits(random);
            History<Optional<Job>> stepwise = History.none(new JobFold("q-0007"));
            List<Posted> posted = posted(edits);
            for (Posted next : posted) {
                stepwise = stepwise.advance(next);
            }
            History<Optional<Job>> whole = History.of(new JobFold("q-0007"), posted);
            assertThat(stepwise.state()).isEqualTo(whole.state());
            Map<Long, String> why = whole.whyNotUndo();
            posted.forEach(edit ->
                    assertThat(Optional.ofNullable(why.get(edit.seq()))).isEqualTo(whole.whyNotUndo(edit.seq())));
        }
    }

    private static List<JobEdit> randomEdits(Random random) {
        List<JobEdit> edits = new ArrayList<>(List.of(OPENED));
        for (int i = 2; i < 40; i++) {
            edits.add(randomEdit(random, i, edits));
        }
        return edits;
    }

    private static JobEdit randomEdit(Random random, int seq, List<JobEdit> before) {
        String cup = List.of("cup.d", "cup.e", "cup.f").get(random.nextInt(3));
        Stage stage = List.of(Stage.ARRIVAL, Stage.STRIPPED, Stage.REGULATED).get(random.nextInt(3));
        return switch (random.nextInt(8)) {
            case 0 -> height("r." + seq, cup, random.nextInt(10), stage);
            case 1 -> new ReadingWithdrawn("r." + random.nextInt(1, seq), "why");
            case 2 -> new MaterialsFound(List.of(cork("foot." + cup), cork("foot.g")), List.of());
            case 3 -> new Decided(new Decision.Height(cup, random.nextInt(9), "why"));
            case 4 -> new DecisionDropped("height." + cup);
            case 5 -> new StageReached(stage);
            case 6 -> new PhotoTicked("shot-" + random.nextInt(3), random.nextBoolean(), null);
            default -> undoable(random, seq, before);
        };
    }

    /** An undo the shop would allow, else a note. */
    private static JobEdit undoable(Random random, int seq, List<JobEdit> before) {
        long target = random.nextInt(2, seq + 1);
        return history(before).whyNotUndo(target).isEmpty() ? new Undone(target) : new NoteWritten("job", "n" + seq);
    }

    private static ReadingTaken repeat(String id, double mm) {
        return new ReadingTaken(new Reading(
                id,
                ReadingKind.FRONT_HEIGHT,
                "cup.d",
                "",
                Observed.Amount.mm(mm),
                "wedge",
                "" + mm,
                "p-1",
                AT,
                Stage.ARRIVAL,
                "s.1"));
    }

    private static ReadingTaken height(String id, String cup, double mm, Stage stage) {
        return new ReadingTaken(new Reading(
                id,
                ReadingKind.FRONT_HEIGHT,
                cup,
                "",
                Observed.Amount.mm(mm),
                "wedge",
                "" + mm,
                "p-1",
                AT,
                stage,
                null));
    }

    private static Finding cork(String place) {
        return Finding.of(place, "natural cork", Condition.PACKED, Originality.ORIGINAL);
    }

    private static Job job(JobEdit... edits) {
        return fold(edits).orElseThrow();
    }

    private static Optional<Job> fold(JobEdit... edits) {
        return history(List.of(edits)).state();
    }

    private static History<Optional<Job>> history(List<JobEdit> edits) {
        return History.of(new JobFold("q-0007"), posted(edits));
    }

    private static List<Posted> posted(List<JobEdit> edits) {
        List<Posted> posted = new ArrayList<>();
        edits.forEach(edit -> posted.add(new Posted(posted.size() + 1, AT, "p-1", edit)));
        return posted;
    }
}
