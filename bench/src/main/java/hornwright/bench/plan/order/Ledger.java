package hornwright.bench.plan.order;

import hornwright.bench.steps.WorkEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Turns what was wanted, read and signed, in the order it was written down, into disturbances and signatures. A decision or
 * a reading disturbs its step only when the step was last signed on another one: changed and changed back before anybody
 * signed, it asks for nothing. A bad result asks again until somebody looked at it and found it right.
 */
final class Ledger {
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Set<String> signed = new HashSet<>();

    /** With a place kept free for each disturbance that may turn out to be one. */
    private final List<@Nullable WorkEvent> events = new ArrayList<>();

    /** What one decision or measurement says of a step now, and what the step was last signed on. */
    private static final class Entry {
        private final String step;
        private Wanted signedOn = new Wanted.Nothing();
        private Wanted now = new Wanted.Nothing();
        private int at = -1;
        private boolean accepted;
        private BiFunction<Wanted, Wanted, String> why = (is, was) -> "";

        Entry(String step) {
            this.step = step;
        }

        void forget() {
            now = new Wanted.Nothing();
            signedOn = now;
        }
    }

    /**
     * Something is wanted or was read.
     *
     * @param why in one line, from what is wanted now and what the step was signed on
     */
    void want(String topic, String step, Wanted wanted, BiFunction<Wanted, Wanted, String> why) {
        Entry entry = entry(topic, step);
        entry.now = wanted;
        entry.why = why;
        if (wanted.isItsOwnMeasure() && entry.signedOn instanceof Wanted.Nothing) {
            entry.signedOn = wanted;
        }
        entry.at = events.size();
        events.add(null);
    }

    /** Whether a bad result of this topic is settled to stay, so that its step is signed on it as it is. */
    void accept(String topic, String step, boolean accepted) {
        entry(topic, step).accepted = accepted;
    }

    /** A reading said to have been wrong: as if never taken; what was signed on it stays until the next says otherwise. */
    void withdraw(String reading) {
        for (Entry entry : entries.values()) {
            Wanted.Figure now = entry.now.read();
            if (now != null && now.id().equals(reading)) {
                entry.now = entry.signedOn;
            }
        }
    }

    /** Readings that no longer tell anything; what they asked for while they did is still asked. */
    void lapse(Predicate<String> readings) {
        for (Entry entry : entries.values()) {
            Wanted.Figure now = entry.now.read();
            if (now != null && entry.now.isOfTheResult() && readings.test(now.id())) {
                close(entry);
                entry.forget();
            }
        }
    }

    void disturb(String step, String why) {
        events.add(new WorkEvent.Disturbed(step, why));
    }

    /** @param changed whether something was done; the first time it always was */
    void sign(String step, boolean changed) {
        boolean worked = !signed.contains(step) || changed;
        for (Entry entry : entries.values()) {
            if (entry.step.equals(step)) {
                close(entry);
                if (worked && entry.now.isOfTheResult() && !entry.accepted) {
                    entry.forget();
                }
            }
        }
        signed.add(step);
        events.add(new WorkEvent.SignedOff(step, changed));
    }

    /** All there is, once everything is told. */
    List<WorkEvent> events() {
        entries.values().forEach(this::close);
        return events.stream().filter(Objects::nonNull).toList();
    }

    private Entry entry(String topic, String step) {
        return entries.computeIfAbsent(topic, none -> new Entry(step));
    }

    /** Its step is signed, or all is told: now it shows whether something else holds than before. */
    private void close(Entry entry) {
        if (entry.now.differsFrom(entry.signedOn)) {
            events.set(entry.at, new WorkEvent.Disturbed(entry.step, entry.why.apply(entry.now, entry.signedOn)));
        }
        entry.signedOn = entry.now;
    }
}
