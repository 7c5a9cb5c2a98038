package hornwright.bench.plan.order;

import hornwright.bench.plan.PlannedNumber;
import org.jspecify.annotations.Nullable;

/** What a step is made to suit: nothing yet, what a person settled, or what was read. */
sealed interface Wanted {
    /** Two standard uncertainties of a difference; less than that is the same cup read twice. */
    double COVERAGE = 2;

    record Nothing() implements Wanted {}

    /** @param words the decision, "5.3 mm at the front" */
    record Decided(String words) implements Wanted {}

    record Read(String id, @Nullable String series, PlannedNumber number) implements Wanted {
        /** Repeats of one series scatter; that is no new measurement. */
        boolean isFarFrom(Read was) {
            boolean repeats = series != null && series.equals(was.series);
            double combined = COVERAGE * Math.hypot(number.u(), was.number.u());
            return !repeats && Math.abs(number.value() - was.number.value()) > combined;
        }
    }

    /** Whether work done to suit {@code before} no longer suits this. */
    default boolean differsFrom(Wanted before) {
        return switch (this) {
            case Read now -> before instanceof Read was && now.isFarFrom(was);
            case Decided now -> !now.equals(before);
            case Nothing now -> before instanceof Decided;
        };
    }
}
