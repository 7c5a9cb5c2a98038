package hornwright.desk.journal;

import hornwright.bench.job.Kind;
import hornwright.bench.job.StreamName;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;

/** The one table in which every change is kept, in order, for good. Safe to use from several threads. */
public final class Journal {
    private final Database database;
    private final Clock clock;

    public Journal(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** A projection written in the same transaction as the entries it follows from. */
    @FunctionalInterface
    public interface Alongside {
        void write(Handle transaction, List<Entry> fresh);

        static Alongside nothing() {
            return (transaction, fresh) -> {};
        }
    }

    /**
     * Keeps all drafts or none, in one transaction. When it returns {@link Appended.Kept}, they are on disk. The key
     * makes a repeat harmless: the same key with the same drafts gives the entries of the first time. When the database
     * fails, {@link Unusable} says so; the edits are then there as a whole or not at all, and sending them again with the
     * same key settles it.
     */
    public Appended append(List<Draft> drafts, Hand hand, String key, Alongside alongside) {
        requireKey(drafts, key);
        try {
            return appendIn(drafts, hand, key, alongside);
        } catch (JdbiException e) {
            throw Refusal.notKept(e);
        }
    }

    private Appended appendIn(List<Draft> drafts, Hand hand, String key, Alongside alongside) {
        return database.writer().inTransaction(transaction -> {
            database.claim(transaction);
            List<Entry> before = Rows.withKeys(transaction, keys(key, drafts.size()));
            if (!before.isEmpty()) {
                return repeats(before, drafts)
                        ? new Appended.Kept(before, true)
                        : new Appended.KeyReused(before, drafts);
            }
            List<Entry> theirs = since(transaction, drafts);
            if (!theirs.isEmpty()) {
                return new Appended.Conflict(theirs, drafts);
            }
            List<Entry> fresh = place(drafts, hand, key, Rows.last(transaction));
            Rows.insert(transaction, fresh);
            alongside.write(transaction, fresh);
            return new Appended.Kept(fresh, false);
        });
    }

    /** A stream's entries after {@code seq}, in order. */
    public List<Entry> read(StreamName stream, long seq) {
        return database.reader().withHandle(handle -> Rows.ofStream(handle, stream, seq));
    }

    /** Every stream that has an edit, by name. */
    public List<StreamName> streams() {
        return database.reader().withHandle(Rows::streams);
    }

    /** The first entry kept under this key, if the key was ever used. */
    public Optional<Entry> withKey(String key) {
        return database.reader()
                .withHandle(handle ->
                        Rows.withKeys(handle, List.of(keyOf(key, 0))).stream().findFirst());
    }

    /** A sentence for every kind of edit in the journal that only a newer program knows; empty when there is none. */
    public List<String> unknownKinds() {
        return database.reader().withHandle(Rows::kinds).stream()
                .filter(kind -> !EditJson.knows(kind.word(), kind.version()))
                .map(kind -> "The journal holds edits of the kind '%s', version %d, which only a newer program knows."
                        .formatted(kind.word(), kind.version()))
                .toList();
    }

    /** The position of the newest entry, 0 when there is none. */
    public long head() {
        return database.reader().withHandle(handle -> Rows.last(handle).position());
    }

    /** The position of the newest entry of any job, 0 when there is none. */
    public long lastOfJobs() {
        return database.reader().withHandle(Rows::lastOfJobs);
    }

    /** The position of the newest entry that belongs to no job, 0 when there is none. */
    public long lastOfShop() {
        return database.reader().withHandle(Rows::lastOfShop);
    }

    /** Gives every entry by position to {@code each}, as one consistent picture, without holding them all. */
    public void readAll(Consumer<Entry> each) {
        database.reader().useTransaction(handle -> Rows.all(handle, each));
    }

    /** Faults of the chain, in words; empty when every row is as it was written and none is missing. */
    public List<String> checkChain() {
        ChainCheck check = new ChainCheck();
        try {
            readAll(check::next);
        } catch (RuntimeException e) {
            check.unreadable(e);
        }
        return check.faults();
    }

    private List<Entry> since(Handle transaction, List<Draft> drafts) {
        List<Entry> theirs = new ArrayList<>();
        Map<StreamName, Long> reached = new HashMap<>();
        for (Draft draft : drafts) {
            Long before = reached.put(draft.stream(), draft.expectedSeq());
            if (before != null) {
                requireNext(draft, before);
                continue;
            }
            List<Entry> newer = Rows.ofStream(transaction, draft.stream(), draft.expectedSeq());
            theirs.addAll(newer);
            if (newer.isEmpty() && Rows.lastSeq(transaction, draft.stream()) != draft.expectedSeq()) {
                throw new IllegalArgumentException(
                        "%s has no edit %d yet".formatted(draft.stream(), draft.expectedSeq()));
            }
        }
        return theirs;
    }

    private List<Entry> place(List<Draft> drafts, Hand hand, String key, Rows.Last last) {
        Instant at = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        List<Entry> fresh = new ArrayList<>();
        String prevHash = last.hash();
        for (int i = 0; i < drafts.size(); i++) {
            Draft draft = drafts.get(i);
            Kind kind = EditJson.kindOf(draft.edit());
            Entry entry = new Entry(
                            last.position() + 1 + i,
                            draft.stream(),
                            draft.expectedSeq() + 1,
                            at,
                            hand,
                            kind.word(),
                            kind.version(),
                            EditJson.write(draft.edit()),
                            "",
                            "",
                            keyOf(key, i))
                    .sealedAfter(prevHash);
            fresh.add(entry);
            prevHash = entry.hash();
        }
        return fresh;
    }

    /** The same streams and the same edits; the seq may differ, since a retry may expect more than the first try did. */
    private static boolean repeats(List<Entry> before, List<Draft> drafts) {
        return before.size() == drafts.size()
                && IntStream.range(0, drafts.size()).allMatch(i -> {
                    Draft draft = drafts.get(i);
                    Entry entry = before.get(i);
                    return entry.stream().equals(draft.stream())
                            && entry.kind().equals(EditJson.kindOf(draft.edit()).word())
                            && entry.edit().equals(EditJson.write(draft.edit()));
                });
    }

    private static void requireKey(List<Draft> drafts, String key) {
        if (drafts.isEmpty()) {
            throw new IllegalArgumentException("nothing to append");
        }
        if (key.isBlank() || key.length() > 200) {
            throw new IllegalArgumentException("an append needs a key of 1 to 200 characters");
        }
    }

    private static void requireNext(Draft draft, long before) {
        if (draft.expectedSeq() != before + 1) {
            throw new IllegalArgumentException("the next draft of %s must expect %d, not %d"
                    .formatted(draft.stream(), before + 1, draft.expectedSeq()));
        }
    }

    private static List<String> keys(String key, int count) {
        // One more than asked for, so that a longer first try with the same key is noticed.
        return IntStream.rangeClosed(0, count).mapToObj(i -> keyOf(key, i)).toList();
    }

    private static String keyOf(String key, int index) {
        return index + ":" + key;
    }
}
