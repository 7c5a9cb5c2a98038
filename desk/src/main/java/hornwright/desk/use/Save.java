package hornwright.desk.use;

import hornwright.bench.job.Edit;
import hornwright.bench.job.Fields;
import hornwright.bench.job.History;
import hornwright.bench.job.Posted;
import hornwright.bench.job.StreamName;
import hornwright.bench.job.Undone;
import hornwright.desk.journal.Appended;
import hornwright.desk.journal.Cards;
import hornwright.desk.journal.Draft;
import hornwright.desk.journal.Entry;
import hornwright.desk.journal.Unusable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps the drafts of one form. When somebody else was first, the drafts move up behind what they wrote, unless both
 * wrote the same field: then both sides are given back and a person chooses.
 */
final class Save {
    private static final int TRIES = 50;

    private final Shop shop;
    private final Form form;

    Save(Shop shop, Form form) {
        this.shop = shop;
        this.form = form;
    }

    Saved all(List<Draft> first) {
        if (!shop.readOnlyBecause().isEmpty()) {
            throw new Unusable(String.join(" ", shop.readOnlyBecause()) + " Nothing is written to it.");
        }
        List<Draft> drafts = first;
        for (int i = 0; i < TRIES; i++) {
            switch (append(drafts)) {
                case Appended.Kept kept -> {
                    return kept(kept);
                }
                case Appended.KeyReused reused -> {
                    return new Saved.Refused(
                            "This form was sent before with something else in it; open the page again.");
                }
                case Appended.Conflict conflict -> {
                    if (i == TRIES - 1 || meet(conflict.theirs(), drafts)) {
                        return new Saved.Conflict(
                                conflict.theirs().stream().map(Memory::posted).toList(),
                                drafts.stream().map(Draft::edit).toList());
                    }
                    drafts = movedUp(drafts);
                }
            }
        }
        throw new IllegalStateException("the last try returns");
    }

    private Appended append(List<Draft> drafts) {
        return shop.data().journal().append(drafts, form.hand(), form.key(), Cards.alongside(shop::cards));
    }

    private static Saved.Kept kept(Appended.Kept kept) {
        StreamName stream = kept.entries().getFirst().stream();
        Entry last = kept.entries().stream()
                .filter(entry -> entry.stream().equals(stream))
                .reduce((a, b) -> b)
                .orElseThrow();
        List<Posted> edits = kept.entries().stream().map(Memory::posted).toList();
        return new Saved.Kept(stream, last.seq(), last.at(), edits, kept.repeated());
    }

    private boolean meet(List<Entry> theirs, List<Draft> mine) {
        return theirs.stream().anyMatch(entry -> {
            History<?> history = shop.history(entry.stream());
            Fields written = history.fieldsOf(entry.seq());
            return mine.stream()
                    .filter(draft -> draft.stream().equals(entry.stream()))
                    .anyMatch(draft -> fields(history, draft.edit()).meets(written));
        });
    }

    private static Fields fields(History<?> history, Edit edit) {
        return edit instanceof Undone undo ? history.fieldsOf(undo.seq()) : edit.fields();
    }

    private List<Draft> movedUp(List<Draft> drafts) {
        Map<StreamName, Long> reached = new HashMap<>();
        List<Draft> moved = new ArrayList<>();
        for (Draft draft : drafts) {
            long expected = reached.computeIfAbsent(
                    draft.stream(), stream -> shop.history(stream).seq());
            moved.add(new Draft(draft.stream(), expected, draft.edit()));
            reached.put(draft.stream(), expected + 1);
        }
        return moved;
    }
}
