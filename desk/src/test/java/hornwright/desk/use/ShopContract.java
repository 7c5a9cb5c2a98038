package hornwright.desk.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.job.Arrival;
import hornwright.bench.job.History;
import hornwright.bench.job.Identity;
import hornwright.bench.job.Job;
import hornwright.bench.job.JobFold;
import hornwright.bench.job.ReadingTaken;
import hornwright.bench.job.StreamName;
import hornwright.bench.steps.StageClock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.desk.find.Text;
import hornwright.desk.journal.Card;
import hornwright.desk.journal.Hand;
import hornwright.desk.journal.Place;
import hornwright.desk.json.BadInput;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the verbs promise, on whichever database. */
abstract class ShopContract {
    private static final Hand HAND = new Hand("p-1", "bench one");

    @SuppressWarnings("NullAway.Init")
    private Shop shop;

    abstract Place place();

    @BeforeEach
    void open() {
        shop = Shop.over(place().open());
    }

    @AfterEach
    void close() {
        shop.close();
    }

    @Test
    void a_horn_taken_in_stands_on_the_shelf_under_the_next_number() {
        assertThat(openJob()).isEqualTo("q-0001");
        assertThat(openJob()).isEqualTo("q-0002");
        assertThat(new Shelf(shop).all()).extracting(Card::job).containsExactly("q-0002", "q-0001");
        assertThat(new Shelf(shop).find("ALTO gurgle")).hasSize(2);
        assertThat(new Shelf(shop).find("tenor")).isEmpty();
    }

    @Test
    void what_the_shelf_showed_is_remembered_until_anything_it_follows_from_changes() {
        String job = openJob();
        assertThat(shown(job, "one", "built at noon")).isEqualTo("one");
        assertThat(shown(job, "two", "built at noon")).isEqualTo("one");

        new WriteNote(shop).write(job, once(1), "job", "a dent under the low C guard");
        assertThat(shown(job, "three", "built at noon")).as("the horn changed").isEqualTo("three");
        new PutStock(shop).put(once(0), new StockItem("pad-20-4.5", StockKind.PAD, "leather", 20.0, 4.5, 3, null));
        assertThat(shown(job, "four", "built at noon")).as("the shop changed").isEqualTo("four");
        assertThat(shown(job, "five", "built at one")).as("the program changed").isEqualTo("five");
        assertThat(shown(job, "six", ""))
                .as("nobody knows which program this is")
                .isEqualTo("six");
        assertThat(shown(job, "seven", "built at one")).isEqualTo("five");
    }

    private String shown(String job, String made, String program) {
        ShelfMemory memory = ShelfMemory.of(shop, program);
        Card card = new Shelf(shop)
                .all().stream().filter(one -> one.job().equals(job)).findFirst().orElseThrow();
        String shown = memory.of(card, () -> made);
        memory.keep();
        return shown;
    }

    @Test
    void what_was_written_down_anywhere_is_found_and_what_was_taken_back_is_not() {
        String job = openJob();
        new NoteOwner(shop).note(job, once(1), new NoteOwner.Owner("Mühle & Söhne", "", ""), "gurgles on low B");
        new WriteNote(shop).write(job, once(2), "foot.g-sharp", "skived by hand, looks older");
        FindAnything anything = new FindAnything(shop);
        for (String asked : List.of("muhle", "GURGL", "41207", "alto mühle")) {
            assertThat(anything.find(asked, null, null)).as(asked).containsKey(Text.Sort.HORN);
        }
        assertThat(anything.find("skiv g#", null, null)).containsOnlyKeys(Text.Sort.NOTE);
        new WriteNote(shop).write(job, once(3), "foot.g-sharp", "");
        assertThat(anything.find("skiv", null, null)).isEmpty();
        assertThat(Objects.requireNonNull(anything.find("g# foot", job, Keyworks.of(shop.jobNow(job)))
                                .get(Text.Sort.PLACE))
                        .best())
                .first()
                .satisfies(hit -> assertThat(hit.text().title()).isEqualTo("G♯ foot"));
        new KeepPerson(shop)
                .forget(Objects.requireNonNull(shop.jobNow(job).arrival().owner()));
        assertThat(anything.find("muhle", null, null)).isEmpty();
    }

    @Test
    void a_page_that_knows_more_edits_than_there_are_is_refused_with_a_sentence() {
        String job = openJob();
        Saved outcome = new WriteNote(shop).write(job, once(99_999), "job", "from another shop's page");
        assertThat(outcome)
                .isInstanceOfSatisfying(
                        Saved.Refused.class,
                        refused -> assertThat(refused.why()).contains("open it again"));
        assertThat(shop.jobNow(job).notes()).isEmpty();
    }

    @Test
    void a_form_sent_twice_opens_one_job_and_keeps_one_reading() {
        Form form = once(0);
        Saved first = new OpenJob(shop).open(form, alto(), new Arrival(null, ""), null);
        Saved again = new OpenJob(shop).open(form, alto(), new Arrival(null, ""), null);
        assertThat(new Shelf(shop).all()).hasSize(1);
        assertThat(again).isInstanceOfSatisfying(Saved.Kept.class, kept -> {
            assertThat(kept.repeated()).isTrue();
            assertThat(kept.edits()).isEqualTo(((Saved.Kept) first).edits());
        });

        Form reading = once(1);
        measure("q-0001", reading, "cup.d", 4.35);
        new ReachStage(shop).reach("q-0001", once(2), Stage.STRIPPED);
        assertThat(measure("q-0001", reading, "cup.d", 4.35))
                .isInstanceOfSatisfying(
                        Saved.Kept.class, kept -> assertThat(kept.repeated()).isTrue());
        assertThat(shop.jobNow("q-0001").readings().current()).hasSize(1);
    }

    @Test
    void a_key_used_again_for_something_else_is_refused_with_a_sentence() {
        String job = openJob();
        Form form = once(1);
        measure(job, form, "cup.d", 4.35);
        assertThat(measure(job, form, "cup.d", 4.45)).isInstanceOf(Saved.Refused.class);
        assertThat(shop.job(job).seq()).isEqualTo(2);
    }

    @Test
    void two_benches_at_different_cups_are_merged() {
        String job = openJob();
        measure(job, once(1), "cup.d", 4.35);
        assertThat(measure(job, once(1), "cup.e", 4.40))
                .isInstanceOfSatisfying(
                        Saved.Kept.class, kept -> assertThat(kept.seq()).isEqualTo(3));
        assertThat(shop.jobNow(job).readings().current()).hasSize(2);
    }

    @Test
    void two_benches_at_the_same_cup_get_both_sides_and_nothing_is_overwritten() {
        String job = openJob();
        measure(job, once(1), "cup.d", 4.35);
        assertThat(measure(job, once(1), "cup.d", 4.80)).isInstanceOfSatisfying(Saved.Conflict.class, conflict -> {
            assertThat(conflict.theirs())
                    .singleElement()
                    .satisfies(theirs -> assertThat(mm(theirs.edit())).isEqualTo(4.35));
            assertThat(conflict.mine())
                    .singleElement()
                    .satisfies(mine -> assertThat(mm(mine)).isEqualTo(4.80));
        });
        assertThat(shop.job(job).seq()).isEqualTo(2);
        assertThat(measure(job, once(2), "cup.d", 4.80)).isInstanceOf(Saved.Kept.class);
    }

    @Test
    void a_clock_that_was_started_and_stopped_twice_adds_up_and_is_taken_back_by_undo() {
        String job = openJob();
        TurnClock clock = new TurnClock(shop);
        assertThat(clock.stop(job, once(1), Instant.now())).isInstanceOf(Saved.Refused.class);
        for (int stretch = 0; stretch < 2; stretch++) {
            clock.start(job, once(shop.job(job).seq()), Stage.KEYS_FITTED);
            assertThat(clock.start(job, once(shop.job(job).seq()), Stage.PADDED))
                    .isInstanceOf(Saved.Refused.class);
            Instant since = Objects.requireNonNull(spent(job).running()).since();
            clock.stop(job, once(shop.job(job).seq()), since.plusSeconds(20 * 60));
        }
        assertThat(spent(job).minutes(Stage.KEYS_FITTED)).isEqualTo(40);
        assertThat(spent(job).running()).isNull();
        long seq = shop.job(job).seq();
        new Undo(shop).undo(StreamName.ofJob(job), once(seq), seq);
        assertThat(spent(job).minutes(Stage.KEYS_FITTED)).isEqualTo(20);
    }

    private StageClock spent(String job) {
        return StageClock.of(shop.jobNow(job).readings().current());
    }

    @Test
    void a_reading_carries_the_hand_the_time_and_the_stage_it_was_taken_at() {
        String job = openJob();
        new ReachStage(shop).reach(job, once(1), Stage.STRIPPED);
        measure(job, once(2), "cup.d", 4.35);
        Reading reading = shop.jobNow(job).readings().current().getFirst();
        assertThat(reading.who()).isEqualTo("p-1");
        assertThat(reading.when()).isEqualTo(Place.CLOCK.instant());
        assertThat(reading.stage()).isEqualTo(Stage.STRIPPED);
        assertThat(reading.raw()).isEqualTo("4.35");
    }

    @Test
    void a_reading_of_nothing_this_horn_has_is_refused_with_what_would_be_right() {
        String job = openJob();
        assertThatThrownBy(() -> measure(job, once(1), "cup.high-g", 4.0))
                .isInstanceOfSatisfying(
                        BadInput.class,
                        bad -> assertThat(bad.faults()).singleElement().satisfies(fault -> {
                            assertThat(fault.pointer()).isEqualTo("/of");
                            assertThat(fault.example()).contains("cup.low-b-flat");
                        }));
        assertThatThrownBy(() -> new RecordReading(shop)
                        .record(
                                job,
                                once(1),
                                RecordReading.Typed.of(
                                        ReadingKind.TOUCH_WEIGHT, "f-sharp", "", Observed.Amount.mm(1), "1 mm")))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("not in mm");
        assertThatThrownBy(() -> measure("q-0099", once(0), "cup.d", 4.0)).isInstanceOf(BadInput.class);
        assertThat(shop.job(job).seq()).isEqualTo(1);
    }

    @Test
    void one_stroke_paints_places_and_one_undo_takes_it_off_again() {
        String job = openJob();
        new RecordFindings(shop).record(job, once(1), List.of(felt("foot.d"), felt("foot.e")), List.of());
        assertThat(shop.jobNow(job).findings().byPlace()).hasSize(2);

        assertThat(new Undo(shop).undoOfJob(job, once(2), 2)).isInstanceOf(Saved.Kept.class);
        assertThat(shop.jobNow(job).findings().byPlace()).isEmpty();
        assertThat(new Undo(shop).undoOfJob(job, once(3), 3)).isInstanceOf(Saved.Kept.class);
        assertThat(shop.jobNow(job).findings().byPlace()).hasSize(2);
        assertThat(new Undo(shop).undoOfJob(job, once(4), 1))
                .isInstanceOfSatisfying(
                        Saved.Refused.class,
                        refused -> assertThat(refused.why()).contains("stands on it"));
    }

    @Test
    void what_is_settled_at_contacts_is_work_until_it_is_done_and_each_can_be_taken_back() {
        String job = openJob();
        List<Decision.Contact> both = List.of(
                new Decision.Contact("link.d-to-f-sharp", -0.08, "leaf"),
                new Decision.Contact("link.a-to-bis", 0.12, "leaf"));
        Form accept = once(1);
        new Regulate(shop).accept(job, accept, both);
        new Regulate(shop).accept(job, accept, both);
        assertThat(shop.jobNow(job).decisions().values()).containsExactlyElementsOf(both);
        assertThat(new Undo(shop).undoOfJob(job, once(3), 3)).isInstanceOf(Saved.Kept.class);
        assertThat(shop.jobNow(job).decisions().values()).containsExactly(both.getFirst());
        new Regulate(shop).done(job, once(4), both.getFirst());
        assertThat(shop.jobNow(job).decisions()).isEmpty();
        assertThat(shop.jobNow(job).work())
                .extracting(done -> done.kind().word() + " " + done.of())
                .containsExactly("link changed link.d-to-f-sharp", "signed off regulate.d-to-f-sharp");
    }

    @Test
    void an_undo_sent_twice_undoes_once() {
        String job = openJob();
        new WriteNote(shop).write(job, once(1), "job", "pads hard");
        Form form = once(2);
        assertThat(new Undo(shop).undoOfJob(job, form, 2)).isInstanceOf(Saved.Kept.class);
        assertThat(new Undo(shop).undoOfJob(job, form, 2))
                .isInstanceOfSatisfying(
                        Saved.Kept.class, kept -> assertThat(kept.repeated()).isTrue());
        assertThat(shop.job(job).seq()).isEqualTo(3);
    }

    @Test
    void the_history_tells_newest_first_what_was_done_by_whom() {
        String job = openJob();
        new Decide(shop).decide(job, once(1), new Decision.Use(AgreedUse.WORKING, "plays weekly"));
        assertThat(new ShowHistory(shop).ofJob(job))
                .extracting(ShowHistory.Line::words)
                .containsExactly("decided about use: plays weekly", "opened: alto 41207");
    }

    @Test
    void what_is_in_memory_is_what_all_edits_folded_at_once_give() {
        String job = openJob();
        for (int i = 0; i < 12; i++) {
            long seq = shop.job(job).seq();
            measure(job, once(seq), i % 2 == 0 ? "cup.d" : "cup.e", 4 + i * 0.05);
            if (i % 5 == 4) {
                new Undo(shop).undoOfJob(job, once(seq + 1), seq + 1);
            }
        }
        History<Optional<Job>> stepwise = shop.job(job);
        assertThat(History.of(new JobFold(job), stepwise.edits()).state()).isEqualTo(stepwise.state());
        close();
        open();
        assertThat(shop.jobNow(job)).isEqualTo(stepwise.state().orElseThrow());
    }

    @Test
    void many_benches_at_once_lose_nothing() throws Exception {
        String job = openJob();
        List<String> cups = List.of("cup.d", "cup.e", "cup.f", "cup.g");
        int each = 12;
        try (var threads = Executors.newFixedThreadPool(cups.size())) {
            List<Future<Integer>> work = new ArrayList<>();
            for (String cup : cups) {
                work.add(threads.submit(bench(job, cup, each)));
            }
            for (Future<Integer> done : work) {
                assertThat(done.get()).isEqualTo(each);
            }
        }
        assertThat(shop.job(job).seq()).isEqualTo(1 + (long) cups.size() * each);
        assertThat(shop.jobNow(job).readings().current())
                .hasSize(cups.size())
                .allSatisfy(reading -> assertThat(((Observed.Amount) reading.observed()).value())
                        .isEqualTo(each));
    }

    private Callable<Integer> bench(String job, String cup, int readings) {
        return () -> {
            int kept = 0;
            while (kept < readings) {
                Saved saved = measure(job, once(shop.job(job).seq()), cup, kept + 1);
                kept += saved instanceof Saved.Kept ? 1 : 0;
            }
            return kept;
        };
    }

    @Test
    void what_is_taken_from_the_shelf_is_gone_and_no_more_than_there_was() {
        new PutStock(shop).put(once(0), new StockItem("pad-20-4.5", StockKind.PAD, "leather", 20.0, 4.5, 3, null));
        assertThat(new UseStock(shop).use(once(0), "pad-20-4.5", 2, null)).isInstanceOf(Saved.Kept.class);
        assertThat(shop.stock().state().items().getFirst().count()).isEqualTo(1);
        assertThatThrownBy(() -> new UseStock(shop).use(once(0), "pad-20-4.5", 2, null))
                .isInstanceOf(BadInput.class);
    }

    @Test
    void a_rule_set_by_the_shop_is_no_longer_typical_and_can_be_put_back() {
        String rule = shop.house().state().rules().all().iterator().next().id();
        double most = shop.house().state().rules().get(rule).most();
        assertThat(new SetRule(shop).set(once(0), rule, most)).isInstanceOf(Saved.Kept.class);
        assertThat(shop.house().state().rules().get(rule).asShipped()).isFalse();
        assertThatThrownBy(() -> new SetRule(shop).set(once(1), rule, most + 1)).isInstanceOf(BadInput.class);
        new SetRule(shop).asShipped(once(1), rule);
        assertThat(shop.house().state().rules().get(rule).asShipped()).isTrue();
    }

    @Test
    void cards_written_along_are_the_cards_made_anew() {
        String job = openJob();
        measure(job, once(1), "cup.d", 4.35);
        new WriteNote(shop).write(job, once(2), "job", "Pads hard");
        List<Card> along = new Shelf(shop).all();
        assertThat(along).isEqualTo(new RebuildCards(shop).made());
        assertThat(along.getFirst().words()).contains("pads hard");
        new RebuildCards(shop).all();
        assertThat(new Shelf(shop).all()).isEqualTo(along);
    }

    @Test
    void a_job_whose_opening_is_undone_leaves_the_shelf() {
        String job = openJob();
        assertThat(new Undo(shop).undo(StreamName.ofJob(job), once(1), 1)).isInstanceOf(Saved.Kept.class);
        assertThat(new Shelf(shop).all()).isEmpty();
        assertThatThrownBy(() -> shop.jobNow(job)).isInstanceOf(BadInput.class);
    }

    private String openJob() {
        Saved saved = new OpenJob(shop).open(once(0), alto(), new Arrival("p-2", "low notes gurgle"), null);
        return ((Saved.Kept) saved).stream().jobId();
    }

    private static Identity alto() {
        var keywork = Keyworks.named("tarrant-loe-alto");
        return new Identity(keywork.id(), keywork.maker(), keywork.voice(), 41207L, keywork.switches());
    }

    private Saved measure(String job, Form form, String cup, double mm) {
        return new RecordReading(shop)
                .record(
                        job,
                        form,
                        RecordReading.Typed.of(
                                ReadingKind.FRONT_HEIGHT, cup, "", Observed.Amount.mm(mm), Double.toString(mm)));
    }

    private static double mm(hornwright.bench.job.Edit edit) {
        return ((Observed.Amount) ((ReadingTaken) edit).reading().observed()).value();
    }

    private static Finding felt(String place) {
        return Finding.of(place, "felt", Condition.PACKED, Originality.LATER);
    }

    private static Form once(long seq) {
        return Form.once(seq, HAND);
    }
}
