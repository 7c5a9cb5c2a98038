package hornwright.desk.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.job.NoteWritten;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.Undone;
import hornwright.desk.journal.Journal.Alongside;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What the journal promises, on whichever database. */
abstract class JournalContract {
    static final Hand HAND = new Hand("p-1", "bench one");
    static final StreamName JOB = StreamName.ofJob("q-0007");

    private ShopData data;
    private Journal journal;

    abstract Place place();

    @BeforeEach
    void open() {
        data = place().open();
        journal = data.journal();
    }

    @AfterEach
    void close() {
        data.close();
    }

    @Test
    void what_was_kept_is_read_back_as_it_was() {
        Appended.Kept kept = keep(note(0, "pads hard"), note(1, "E♭ arm bent"));

        assertThat(journal.read(JOB, 0)).isEqualTo(kept.entries());
        assertThat(kept.entries()).extracting(Entry::seq).containsExactly(1L, 2L);
        assertThat(EditJson.read(kept.entries().getLast()))
                .isEqualTo(new EditJson.Read.Known(new NoteWritten("job", "E♭ arm bent")));
        assertThat(journal.checkChain()).isEmpty();
    }

    @Test
    void it_is_still_there_after_closing_and_opening() {
        List<Entry> before = keep(note(0, "kept")).entries();
        close();
        open();
        assertThat(journal.read(JOB, 0)).isEqualTo(before);
    }

    @Test
    void who_writes_on_an_old_state_gets_both_sides_and_nothing_is_written() {
        Appended.Kept first = keep(note(0, "theirs"));
        Draft mine = note(0, "mine");

        Appended outcome = append("late", mine);

        assertThat(outcome).isEqualTo(new Appended.Conflict(first.entries(), List.of(mine)));
        assertThat(journal.read(JOB, 0)).hasSize(1);
    }

    @Test
    void one_stale_stream_holds_back_the_edits_of_all_streams() {
        keep(note(0, "theirs"));
        Draft fresh = new Draft(StreamName.ofJob("q-0008"), 0, new NoteWritten("job", "other"));

        assertThat(append("both", fresh, note(0, "mine"))).isInstanceOf(Appended.Conflict.class);
        assertThat(journal.streams()).containsExactly(JOB);
    }

    @Test
    void a_retry_with_the_same_key_does_not_post_twice() {
        Appended.Kept first = (Appended.Kept) append("form-1", note(0, "once"), note(1, "and this"));
        keep(note(2, "somebody else in between"));

        Appended second = append("form-1", note(0, "once"), note(1, "and this"));

        assertThat(second).isEqualTo(new Appended.Kept(first.entries(), true));
        assertThat(journal.read(JOB, 0)).hasSize(3);
    }

    @Test
    void a_key_used_again_for_something_else_is_told_and_writes_nothing() {
        append("form-1", note(0, "once"));

        assertThat(append("form-1", note(1, "something else"))).isInstanceOf(Appended.KeyReused.class);
        assertThat(append("form-1", note(0, "once"), note(1, "more"))).isInstanceOf(Appended.KeyReused.class);
        assertThat(journal.read(JOB, 0)).hasSize(1);
    }

    @Test
    void a_longer_append_is_not_mistaken_for_its_own_beginning() {
        append("form-1", note(0, "one"), note(1, "two"));
        assertThat(append("form-1", note(0, "one"))).isInstanceOf(Appended.KeyReused.class);
    }

    @Test
    void what_is_written_alongside_stands_or_falls_with_the_edits() {
        assertThatThrownBy(() -> journal.append(List.of(note(0, "lost")), HAND, "k", (transaction, fresh) -> {
                    transaction.execute("insert into person (id, name, address, telephone, email)"
                            + " values ('p-9', '', '', '', '')");
                    throw new IllegalStateException("the projection failed");
                }))
                .hasMessageContaining("the projection failed");

        assertThat(journal.read(JOB, 0)).isEmpty();
        assertThat(data.people().find("p-9")).isEmpty();
    }

    @Test
    void a_stream_cannot_be_expected_further_than_it_is() {
        assertThatThrownBy(() -> append("k", note(5, "from nowhere"))).hasMessageContaining("no edit 5 yet");
    }

    @Test
    void an_edit_is_refused_in_a_stream_it_does_not_belong_in() {
        assertThatThrownBy(() -> new Draft(StreamName.STOCK, 0, new NoteWritten("job", "text")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new Draft(StreamName.STOCK, 1, new Undone(1)).edit()).isNotNull();
    }

    @Test
    void the_tables_just_made_are_the_ones_the_program_knows_at_a_glance() {
        assertThat(KnownTables.written(data.database())).hasSizeGreaterThan(1);
        assertThat(KnownTables.match(data.database()))
                .as("%s", KnownTables.written(data.database()))
                .isTrue();
    }

    @Test
    void many_hands_at_once_lose_nothing_and_double_nothing() throws Exception {
        int hands = 4;
        int each = 10;
        try (var threads = Executors.newFixedThreadPool(hands)) {
            List<Future<Integer>> work = new ArrayList<>();
            for (int hand = 0; hand < hands; hand++) {
                work.add(threads.submit(writer(hand, each)));
            }
            for (Future<Integer> done : work) {
                assertThat(done.get()).isEqualTo(each);
            }
        }
        List<Entry> all = journal.read(JOB, 0);
        assertThat(all).hasSize(hands * each);
        assertThat(all).extracting(Entry::edit).doesNotHaveDuplicates();
        assertThat(journal.checkChain()).isEmpty();
    }

    private Callable<Integer> writer(int hand, int edits) {
        return () -> {
            int kept = 0;
            while (kept < edits) {
                Draft draft = note(journal.read(JOB, 0).size(), "hand %d edit %d".formatted(hand, kept));
                Appended outcome = append("hand-%d-%d".formatted(hand, kept), draft);
                kept += outcome instanceof Appended.Kept ? 1 : 0;
            }
            return kept;
        };
    }

    @Test
    void when_the_database_fails_it_is_said_and_sending_again_keeps_it_once() {
        keep(note(0, "before"));
        try (AutoCloseable failing = place().fail(data)) {
            assertThatThrownBy(() -> append("form-9", note(1, "x".repeat(4_000_000))))
                    .isInstanceOfSatisfying(Unusable.class, refusal -> {
                        assertThat(refusal.isOnlyNow()).isTrue();
                        assertThat(refusal).hasMessageStartingWith("Not saved");
                    });
            assertThat(failing).isNotNull();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
        assertThat(journal.read(JOB, 0)).hasSize(1);
        assertThat(append("form-9", note(1, "x".repeat(4_000_000)))).isInstanceOf(Appended.Kept.class);
        assertThat(append("form-9", note(1, "x".repeat(4_000_000))))
                .isInstanceOfSatisfying(
                        Appended.Kept.class, kept -> assertThat(kept.repeated()).isTrue());
        assertThat(journal.read(JOB, 0)).hasSize(2);
        assertThat(journal.checkChain()).isEmpty();
        assertThat(data.database().faults()).isEmpty();
    }

    @Test
    void the_journal_cannot_be_changed_through_the_database() {
        keep(note(0, "as it was"));
        assertThatThrownBy(() -> data.database().writer().useHandle(h -> h.execute("update journal set who = 'x'")))
                .hasMessageContaining("only grows");
        assertThatThrownBy(() -> data.database().writer().useHandle(h -> h.execute("delete from journal")))
                .hasMessageContaining("only grows");
    }

    @Test
    void readers_cannot_write() {
        assertThatThrownBy(() -> data.database().reader().useHandle(h -> h.execute("delete from person")))
                .isInstanceOf(RuntimeException.class);
    }

    @Test
    void a_row_changed_behind_the_programs_back_is_found_whatever_was_changed() {
        keep(note(0, "first"), note(1, "second"), note(2, "third"));
        for (String change : List.of(
                "edit = replace(edit, 'second', 'other')",
                "who = 'somebody'",
                "bench = 'elsewhere'",
                "at = '2020-01-01T00:00:00Z'",
                "kind = 'note-read'",
                "version = 2",
                "idempotency_key = 'mine'",
                "hash = prev_hash",
                "stream = 'job.other'",
                "at = 'no time at all'")) {
            List<String> faults = tampered("update journal set " + change + " where position = 2");
            assertThat(faults).as(change).isNotEmpty();
        }
        assertThat(journal.checkChain()).isEmpty();
    }

    @Test
    void a_row_taken_out_is_found() {
        keep(note(0, "first"), note(1, "second"), note(2, "third"));
        assertThat(tampered("delete from journal where position = 2"))
                .anySatisfy(fault -> assertThat(fault).contains("missing"));
    }

    /** What the check says after the change, which is then rolled back. */
    private List<String> tampered(String statement) {
        return data.database().writer().inTransaction(transaction -> {
            place().openTheGuard(transaction);
            transaction.execute(statement);
            ChainCheck check = new ChainCheck();
            try {
                Rows.all(transaction, check::next);
            } catch (RuntimeException e) {
                check.unreadable(e);
            }
            transaction.rollback();
            return check.faults();
        });
    }

    @Test
    void a_kind_from_a_newer_program_reads_as_unknown_and_damage_as_damage() {
        Entry known = keep(note(0, "text")).entries().getFirst();
        assertThat(EditJson.read(as(known, "note-sung", 1, known.edit())))
                .isEqualTo(new EditJson.Read.Unknown("note-sung", 1));
        assertThat(EditJson.read(as(known, "note-written", 99, known.edit())))
                .isEqualTo(new EditJson.Read.Unknown("note-written", 99));
        for (String damaged : List.of(
                "{\"about\":\"job\",\"text\":\"a\",\"size\":1}",
                "{\"about\":\"job\",\"text\":\"a\",\"text\":\"b\"}",
                "{\"about\":\"job\",\"text\":\"a\"} {}",
                "{\"about\":\"job\"}",
                "{\"about\":\"job\",\"text\":1}",
                "{\"about\":\"job\",",
                "")) {
            assertThatThrownBy(() -> EditJson.read(as(known, "note-written", 1, damaged)))
                    .as(damaged)
                    .isInstanceOf(Unusable.class)
                    .hasMessageContaining("Edit 1 of job.q-0007");
        }
    }

    private static Entry as(Entry entry, String kind, int version, String edit) {
        return new Entry(1, JOB, 1, entry.at(), HAND, kind, version, edit, "", "", "k");
    }

    @Test
    void a_person_can_be_forgotten_and_the_edits_stay() {
        data.people().put(new Person("p-1", "Ada Quill", "1 Quay", "555 0100", "ada@example.org"));
        keep(note(0, "by p-1"));

        data.people().forget("p-1");

        assertThat(data.people().find("p-1")).contains(new Person("p-1", "", "", "", ""));
        assertThat(journal.read(JOB, 0).getFirst().hand()).isEqualTo(HAND);
        assertThat(journal.checkChain()).isEmpty();
    }

    @Test
    void a_photo_is_kept_once_and_read_back_by_the_name_its_bytes_give_it() {
        byte[] photo = "not really a photo".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Blob first = data.blobs().put(photo, "image/jpeg");
        Blob second = data.blobs().put(photo, "image/jpeg");

        assertThat(second).isEqualTo(first);
        assertThat(data.blobs().all()).containsExactly(first);
        assertThat(data.blobs().read(first.sha256()))
                .hasValueSatisfying(read -> assertThat(read).isEqualTo(photo));
        assertThat(data.blobs().check()).isEmpty();
        assertThat(data.blobs().read("0".repeat(64))).isEmpty();
    }

    static Draft note(long expected, String text) {
        return new Draft(JOB, expected, new NoteWritten("job", text));
    }

    private Appended append(String key, Draft... drafts) {
        return journal.append(List.of(drafts), HAND, key, Alongside.nothing());
    }

    private Appended.Kept keep(Draft... drafts) {
        return (Appended.Kept) append(drafts[0].toString(), drafts);
    }
}
