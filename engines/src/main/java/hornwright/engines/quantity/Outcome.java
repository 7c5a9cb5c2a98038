package hornwright.engines.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What became of a wish for a number: had, or not had and why. Blank beats invented. */
public sealed interface Outcome<T> {

    /** The answer, how it was reached, and what to keep in mind with it. */
    record Computed<T>(T value, List<String> caveats, String method) implements Outcome<T> {
        public Computed {
            caveats = List.copyOf(caveats);
        }
    }

    /** Something must be measured first; each entry names one thing that would decide it. */
    record Missing<T>(List<String> wouldDecide) implements Outcome<T> {
        public Missing {
            wouldDecide = List.copyOf(wouldDecide);
        }
    }

    /** The question does not arise here. */
    record NotApplicable<T>(String why) implements Outcome<T> {}

    /** The reckoning broke down, and where. */
    record Failed<T>(String where) implements Outcome<T> {}

    static <T> Outcome<T> of(T value, String method) {
        return new Computed<>(value, List.of(), method);
    }

    static <T> Outcome<T> missing(String... wouldDecide) {
        return new Missing<>(List.of(wouldDecide));
    }

    default Optional<T> had() {
        return this instanceof Computed<T> computed ? Optional.of(computed.value()) : Optional.empty();
    }

    /** The same outcome with its value, if any, turned into another. */
    default <R> Outcome<R> map(Function<T, R> turn) {
        return switch (this) {
            case Computed<T> had -> new Computed<>(turn.apply(had.value()), had.caveats(), had.method());
            case Missing<T> missing -> new Missing<>(missing.wouldDecide());
            case NotApplicable<T> not -> new NotApplicable<>(not.why());
            case Failed<T> failed -> new Failed<>(failed.where());
        };
    }
}
