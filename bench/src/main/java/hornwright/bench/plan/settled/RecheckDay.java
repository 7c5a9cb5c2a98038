package hornwright.bench.plan.settled;

import hornwright.bench.rules.ShopRules;
import hornwright.bench.settling.Recheck;
import hornwright.bench.survey.WorkDone;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The day proposed for a second look.
 *
 * @param from the day it is counted from: the last one something was laid, or today where that look would be over already
 * @param laid that last day; null when nothing is written down as laid
 */
public record RecheckDay(
        LocalDate on, LocalDate from, @Nullable LocalDate laid) {

    /** @param dayOf a moment by the clock on the wall of the shop */
    public static RecheckDay of(
            List<WorkDone> work, LocalDate today, Function<Instant, LocalDate> dayOf, ShopRules rules) {
        LocalDate laid = laid(work, dayOf).orElse(null);
        LocalDate from = laid != null && Recheck.day(laid, rules).isAfter(today) ? laid : today;
        return new RecheckDay(Recheck.day(from, rules), from, laid);
    }

    private static Optional<LocalDate> laid(List<WorkDone> work, Function<Instant, LocalDate> dayOf) {
        return work.stream()
                .filter(RecheckDay::lays)
                .flatMap(done -> Stream.ofNullable(done.when()))
                .max(Comparator.naturalOrder())
                .map(dayOf);
    }

    private static boolean lays(WorkDone done) {
        return switch (done.kind()) {
            case FOOT_CHANGED, LINK_CHANGED, PAD_FITTED -> true;
            case SIGNED_OFF -> done.of().startsWith("cork.") || done.of().startsWith("pad.");
            default -> false;
        };
    }
}
