package hornwright.desk.web.measure;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One point of a measuring sheet.
 *
 * @param id of the cup, hole, key or place that is measured
 * @param shownAt the place whose page the name leads to; null when it has none
 */
record Subject(
        String id, String name, @Nullable String shownAt, Function<NumberName, Optional<PlannedNumber>> number) {}
