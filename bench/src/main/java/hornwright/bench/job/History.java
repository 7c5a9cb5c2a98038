package hornwright.bench.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The edits of one stream and the state they add up to. Immutable: {@link #advance} gives a new history. An undo is
 * itself an edit; it makes the fold pass over another one, so nothing is ever taken out of the list, and undoing an
 * undo brings the edit back.
 */
public final class History<S> {
    private final Folding<S> folding;
    private final List<Posted> edits;
    private final Set<Long> undone;
    private final S state;

    private History(Folding<S> folding, List<Posted> edits, Set<Long> undone, S state) {
        this.folding = folding;
        this.edits = edits;
        this.undone = undone;
        this.state = state;
    }

    public static <S> History<S> none(Folding<S> folding) {
        return new History<>(folding, List.of(), Set.of(), folding.start());
    }

    /** Folds all edits at once; they must be in order without a gap. */
    public static <S> History<S> of(Folding<S> folding, Collection<Posted> edits) {
        List<Posted> all = List.copyOf(edits);
        for (int i = 0; i < all.size(); i++) {
            requireNext(i, all.get(i));
        }
        Set<Long> undone = undone(all);
        S state = folding.start();
        for (Posted posted : all) {
            if (counts(posted, undone)) {
                state = folding.with(state, posted);
            }
        }
        return new History<>(folding, all, undone, state);
    }

    /** An empty history filled with all these at once. */
    public History<S> withAll(Collection<Posted> all) {
        if (!edits.isEmpty()) {
            throw new IllegalStateException("only an empty history is filled");
        }
        return of(folding, all);
    }

    /** The history with one more edit, whose seq must be the next. */
    public History<S> advance(Posted next) {
        requireNext(edits.size(), next);
        List<Posted> all = new ArrayList<>(edits);
        all.add(next);
        return next.edit() instanceof Undone
                ? of(folding, all)
                : new History<>(folding, List.copyOf(all), undone, folding.with(state, next));
    }

    public S state() {
        return state;
    }

    /** The seq of the last edit, 0 when there is none. */
    public long seq() {
        return edits.size();
    }

    /** The state as it was when the stream had reached this seq. */
    public S stateAt(long seq) {
        return seq >= seq() ? state : of(folding, edits.subList(0, (int) Math.max(0, seq))).state;
    }

    public List<Posted> edits() {
        return edits;
    }

    public boolean isUndone(long seq) {
        return undone.contains(seq);
    }

    /** Empty when the edit may be undone, else one sentence that says why not. */
    public Optional<String> whyNotUndo(long seq) {
        if (seq < 1 || seq > seq()) {
            return Optional.of("There is no edit %d here; the last one is %d.".formatted(seq, seq()));
        }
        if (undone.contains(seq)) {
            return Optional.of(undoneAlready(seq));
        }
        Fields touched = fieldsOf(seq);
        return edits.subList((int) seq, edits.size()).stream()
                .filter(later -> !undone.contains(later.seq()))
                .filter(later -> fieldsOf(later.seq()).meets(touched))
                .reduce((first, second) -> second)
                .map(History::standsOnIt);
    }

    /** The same for every edit at once: a sentence for each that may not be undone. */
    public Map<Long, String> whyNotUndo() {
        Map<Long, String> why = new HashMap<>();
        Standing standing = new Standing();
        for (Posted posted : edits.reversed()) {
            if (undone.contains(posted.seq())) {
                why.put(posted.seq(), undoneAlready(posted.seq()));
                continue;
            }
            Fields touched = fieldsOf(posted.seq());
            standing.on(touched).ifPresent(later -> why.put(posted.seq(), standsOnIt(later)));
            standing.add(posted, touched);
        }
        return why;
    }

    private static String undoneAlready(long seq) {
        return "Edit %d is undone already.".formatted(seq);
    }

    private static String standsOnIt(Posted later) {
        return "Edit %d stands on it (%s); undo that one first."
                .formatted(later.seq(), later.edit().inWords());
    }

    /** What the edit touches; an undo touches what its target touches. */
    public Fields fieldsOf(long seq) {
        Edit edit = edits.get((int) seq - 1).edit();
        return edit instanceof Undone undo ? fieldsOf(undo.seq()) : edit.fields();
    }

    /** An undo always names an earlier edit, so one pass from the end settles which edits are passed over. */
    private static Set<Long> undone(List<Posted> all) {
        Set<Long> passedOver = new HashSet<>();
        for (Posted posted : all.reversed()) {
            if (posted.edit() instanceof Undone undo && !passedOver.contains(posted.seq())) {
                requireEarlier(undo, posted);
                passedOver.add(undo.seq());
            }
        }
        return Set.copyOf(passedOver);
    }

    private static boolean counts(Posted posted, Set<Long> undone) {
        return !(posted.edit() instanceof Undone) && !undone.contains(posted.seq());
    }

    private static void requireNext(long before, Posted posted) {
        if (posted.seq() != before + 1) {
            throw new IllegalArgumentException("edit %d cannot follow edit %d".formatted(posted.seq(), before));
        }
    }

    private static void requireEarlier(Undone undo, Posted posted) {
        if (undo.seq() >= posted.seq()) {
            throw new IllegalArgumentException(
                    "edit %d undoes edit %d, which is not earlier".formatted(posted.seq(), undo.seq()));
        }
    }
}
