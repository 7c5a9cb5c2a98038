package hornwright.bench.plan;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;

/**
 * Remembers the last answer under each name; an equal question is not answered again. Question and answer are values, so
 * remembering changes no result.
 */
final class Memo<Q, A> {
    private record Known<Q, A>(Q question, A answer) {}

    private final ConcurrentHashMap<String, Known<Q, A>> last = new ConcurrentHashMap<>();
    private final AtomicLong reckoned = new AtomicLong();

    A answer(String name, Q question, Function<Q, A> reckon) {
        Known<Q, A> known = last.get(name);
        if (known != null && known.question().equals(question)) {
            return known.answer();
        }
        A answer = reckon.apply(question);
        reckoned.incrementAndGet();
        last.put(name, new Known<>(question, answer));
        return answer;
    }

    /** How many answers had to be reckoned so far. */
    long reckoned() {
        return reckoned.get();
    }
}
