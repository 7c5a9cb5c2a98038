package hornwright.bench.plan.settled;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecheckDayTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 20);

    private static RecheckDay after(WorkDone... work) {
        return RecheckDay.of(
                List.of(work), TODAY, when -> LocalDate.ofInstant(when, ZoneOffset.UTC), ShopRules.shipped());
    }

    private static WorkDone done(WorkKind kind, String of, String when) {
        return new WorkDone(kind + of, kind, of, Instant.parse(when));
    }

    @Test
    void it_is_counted_from_the_last_day_something_was_laid() {
        RecheckDay day = after(
                done(WorkKind.SIGNED_OFF, "cork.foot.d", "2026-03-02T10:00:00Z"),
                done(WorkKind.SIGNED_OFF, "pad.d", "2026-03-10T10:00:00Z"),
                done(WorkKind.FOOT_CHANGED, "d", "2026-03-04T10:00:00Z"));
        assertThat(day.laid()).isEqualTo(LocalDate.of(2026, 3, 10));
        assertThat(day.on()).isEqualTo(LocalDate.of(2026, 4, 9));
    }

    @Test
    void work_that_lays_nothing_does_not_count() {
        RecheckDay day = after(
                done(WorkKind.SIGNED_OFF, "regulate.d-to-f-sharp", "2026-03-12T10:00:00Z"),
                done(WorkKind.ARM_BENT, "d", "2026-03-12T10:00:00Z"));
        assertThat(day.laid()).isNull();
        assertThat(day.on()).isEqualTo(TODAY.plusDays(30));
    }

    @Test
    void a_day_that_is_over_is_never_proposed() {
        RecheckDay day = after(done(WorkKind.PAD_FITTED, "d", "2026-01-05T10:00:00Z"));
        assertThat(day.laid()).isEqualTo(LocalDate.of(2026, 1, 5));
        assertThat(day.from()).isEqualTo(TODAY);
        assertThat(day.on()).isEqualTo(TODAY.plusDays(30));
    }

    @Test
    void the_day_is_that_of_the_clock_on_the_wall() {
        WorkDone late = done(WorkKind.LINK_CHANGED, "link.d-to-f-sharp", "2026-03-10T23:30:00Z");
        RecheckDay east = RecheckDay.of(
                List.of(late), TODAY, when -> LocalDate.ofInstant(when, ZoneOffset.ofHours(2)), ShopRules.shipped());
        assertThat(east.laid()).isEqualTo(LocalDate.of(2026, 3, 11));
    }
}
