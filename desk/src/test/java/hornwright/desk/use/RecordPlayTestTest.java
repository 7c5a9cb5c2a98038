package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.HeardBy;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.PlayTest.Playing;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Symptom;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.Place;
import hornwright.desk.json.BadInput;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class RecordPlayTestTest {
    private static final Hand HAND = new Hand("p-1", "bench one");
    private static final String ALTO = "q-0001";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shop shop;

    static RecordPlayTest.Heard heard(String fingering, double cents) {
        return new RecordPlayTest.Heard(
                new Conditions("the owner's", "cane 2½", 17.0, 21.5, 442),
                HeardBy.TYPED,
                List.of(new Playing(fingering, cents, null)),
                List.of(),
                Map.of("note.b-flat-3", Symptom.STUFFY),
                Stage.ARRIVAL);
    }

    @BeforeEach
    void open() {
        shop = OpenShop.open(new OpenShop.Where.Folder(folder.resolve("shop")), OpenShop.FirstRun.DEMO, Place.CLOCK);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Form form() {
        return Form.once(shop.job(ALTO).seq(), HAND);
    }

    private int tests() {
        return shop.jobNow(ALTO).playTests().size();
    }

    @Test
    void what_was_played_is_kept_with_its_conditions_and_read_back_after_a_restart() {
        int before = tests();
        new RecordPlayTest(shop).record(ALTO, form(), heard("note.d-4", -6));
        PlayTest kept = shop.jobNow(ALTO).playTests().getLast();
        shop.close();
        open();
        assertThat(shop.jobNow(ALTO).playTests()).hasSize(before + 1).last().isEqualTo(kept);
        assertThat(kept.conditions().insertionMm()).isEqualTo(17.0);
        assertThat(kept.when()).isNotNull();
        assertThat(kept.who()).isEqualTo("p-1");
    }

    @Test
    void a_play_test_can_be_undone_withdrawn_and_brought_back() {
        int before = tests();
        Saved.Kept taken = (Saved.Kept) new RecordPlayTest(shop).record(ALTO, form(), heard("note.d-4", -6));
        String id = shop.jobNow(ALTO).playTests().getLast().id();
        new Undo(shop).undoOfJob(ALTO, form(), taken.seq());
        assertThat(tests()).isEqualTo(before);
        new Undo(shop).undoOfJob(ALTO, form(), shop.job(ALTO).seq());
        assertThat(tests()).isEqualTo(before + 1);
        new RecordPlayTest(shop).withdraw(ALTO, form(), id, "the reed was split");
        assertThat(tests()).isEqualTo(before);
        assertThat(new Undo(shop).undoOfJob(ALTO, form(), taken.seq())).isInstanceOf(Saved.Refused.class);
    }

    @Test
    void a_horn_played_at_arrival_is_not_asked_for_its_tuning_again() {
        String tenor = "q-0002";
        ProposePlan plans = new ProposePlan(shop);
        assertThat(plans.of(shop.jobNow(tenor)).missing()).anyMatch(missing -> missing.kind() == ReadingKind.TUNING);
        Form form = Form.once(shop.job(tenor).seq(), HAND);
        new RecordPlayTest(shop).record(tenor, form, heard("note.d-4", -6));
        assertThat(plans.of(shop.jobNow(tenor)).missing()).noneMatch(missing -> missing.kind() == ReadingKind.TUNING);
    }

    @Test
    void a_note_the_horn_has_not_is_refused_with_an_example_and_nothing_is_kept() {
        long before = shop.job(ALTO).seq();
        assertThatThrownBy(() -> new RecordPlayTest(shop).record(ALTO, form(), heard("note.h-4", 3)))
                .isInstanceOfSatisfying(
                        BadInput.class, bad -> assertThat(bad.faults()).hasSize(1));
        assertThat(shop.job(ALTO).seq()).isEqualTo(before);
    }

    @Test
    void an_accepted_height_replaces_the_factorys_at_that_cup_changes_its_foot_and_says_why() {
        ProposePlan plans = new ProposePlan(shop);
        Plan factory = plans.of(shop.jobNow(ALTO));
        PlannedNumber was = target(factory);
        String why = "accepted on 25 November 2026, for E4 and E5";
        Saved.Kept kept = (Saved.Kept)
                new Decide(shop).decide(ALTO, form(), new Decision.Height("cup.d", was.value() + 0.6, why));
        Plan accepted = plans.of(shop.jobNow(ALTO));
        assertThat(target(accepted).value()).isEqualTo(was.value() + 0.6);
        assertThat(accepted.becauses().get(target(accepted).because()).rule()).contains(why);
        assertThat(thickness(accepted)).isLessThan(thickness(factory));
        new Undo(shop).undoOfJob(ALTO, form(), kept.seq());
        assertThat(target(plans.of(shop.jobNow(ALTO)))).isEqualTo(was);
        assertThat(thickness(plans.of(shop.jobNow(ALTO)))).isEqualTo(thickness(factory));
    }

    private static PlannedNumber target(Plan plan) {
        return plan.number("pad.d", NumberName.HEIGHT_TARGET).orElseThrow();
    }

    private static double thickness(Plan plan) {
        return plan.number("foot.d", NumberName.THICKNESS).orElseThrow().value();
    }
}
