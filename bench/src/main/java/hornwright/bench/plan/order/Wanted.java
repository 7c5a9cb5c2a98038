package hornwright.bench.plan.order;

import org.jspecify.annotations.Nullable;

/** What a step is made to suit, or what was read of its result. */
sealed interface Wanted {
    /** Two standard uncertainties of a difference; less than that is the same thing read twice. */
    double COVERAGE = 2;

    record Nothing() implements Wanted {}

    /** @param words the decision, "5.3 mm at the front" */
    record Decided(String words) implements Wanted {}

    /** A word the step was made to suit: of what an adhesive is, or the finish. */
    record Noted(String words) implements Wanted {}

    /**
     * A figure the step was made to suit: it stays what the step was made to, whatever is done meanwhile.
     *
     * @param figure what was read, once
     */
    record Suited(Figure figure) implements Wanted {}

    /** A figure of the result, such as a height: done again, it is another one, and says nothing of the former. */
    record Result(Figure figure) implements Wanted {}

    /**
     * A figure of the result that is bad when it is much: the gap under a rim, a grade of play.
     *
     * @param limit up to which it is as it should be
     */
    record Judged(Figure figure, double limit) implements Wanted {
        private boolean isBad() {
            return figure.value - limit > COVERAGE * figure.u;
        }

        private boolean isWorseThan(Figure was) {
            return figure.value - was.value > COVERAGE * Math.hypot(figure.u, was.u) && !figure.repeats(was);
        }
    }

    /**
     * One reading as a number.
     *
     * @param series readings of one series repeat each other
     * @param words how it was said, for the line that says why
     */
    record Figure(String id, @Nullable String series, double value, double u, String words) {
        /** Repeats of one series scatter; that is no new measurement. */
        private boolean repeats(Figure was) {
            return series != null && series.equals(was.series);
        }

        private boolean isFarFrom(Figure was) {
            return !repeats(was) && Math.abs(value - was.value) > COVERAGE * Math.hypot(u, was.u);
        }
    }

    /** Whether work done to suit {@code before} no longer suits this. */
    default boolean differsFrom(Wanted before) {
        return switch (this) {
            case Suited now -> before instanceof Suited was && now.figure.isFarFrom(was.figure);
            case Result now -> before instanceof Result was && now.figure.isFarFrom(was.figure);
            case Judged now -> now.isBad() && !(before instanceof Judged was && !now.isWorseThan(was.figure));
            case Decided now -> !now.equals(before);
            case Noted now -> before instanceof Noted && !now.equals(before);
            case Nothing now -> before instanceof Decided;
        };
    }

    /** What a first reading is held against from then on; a bad result is never taken for granted. */
    default boolean isItsOwnMeasure() {
        return this instanceof Suited || this instanceof Result || this instanceof Noted;
    }

    /** Whether it tells of the result of a step and so ends when the step is done again. */
    default boolean isOfTheResult() {
        return this instanceof Result || this instanceof Judged;
    }

    /** The figure, if it is one. */
    default @Nullable Figure read() {
        return switch (this) {
            case Suited suited -> suited.figure;
            case Result result -> result.figure;
            case Judged judged -> judged.figure;
            case Decided decided -> null;
            case Noted noted -> null;
            case Nothing nothing -> null;
        };
    }
}
