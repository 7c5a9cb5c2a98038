package hornwright.bench.plan;

import hornwright.bench.horn.Form;
import org.jspecify.annotations.Nullable;

/**
 * One piece of cork or felt to cut.
 *
 * @param cutMm thickness to cut at; null when nobody can say yet
 * @param sheetMm stocked thickness to cut it from; null when none is thick enough
 * @param finishMm thickness it is expected to end at; null when that is not claimed
 * @param method how to come to the end: "sand down to the height", "sand until both close"
 */
public record CutLine(
        String place,
        String material,
        Form form,
        @Nullable PlannedNumber cutMm,
        @Nullable PlannedNumber sheetMm,
        @Nullable PlannedNumber finishMm,
        String method) {}
