package hornwright.bench.plan.regulation;

import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a first assembly, cut to plan and not regulated, would come to.
 *
 * @param allClosed share of assemblies in which every cup of every set shuts, in hundredths
 * @param largestGap that 95 assemblies in 100 stay below
 * @param worstCup the cup open most often; null if none ever is
 * @param mostWorth the three contacts that would raise the share most if they were cut exactly
 */
public record YieldAnswer(
        PlannedNumber allClosed,
        PlannedNumber largestGap,
        @Nullable String worstCup,
        List<Worth> mostWorth,
        Becauses becauses) {
    public YieldAnswer {
        mostWorth = List.copyOf(mostWorth);
    }

    /** A contact, the share in hundredths were it exact, and the mean of the largest gaps then. */
    public record Worth(String link, PlannedNumber allClosed, PlannedNumber meanGap) {}
}
