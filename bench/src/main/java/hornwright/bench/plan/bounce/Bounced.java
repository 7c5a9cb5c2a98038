package hornwright.bench.plan.bounce;

import hornwright.bench.bounce.KeyBounce.Verdict;
import hornwright.bench.plan.PlannedNumber;
import hornwright.engines.action.Trace;

/**
 * One key let go.
 *
 * @param what lies where, in words: "as planned", "with a rivet"
 * @param period whether it is what the maker fitted
 * @param opening ms until its foot touches
 * @param rebound mm the cup first comes back by
 * @param settled ms until it is quiet
 * @param trace where the cup is, and when
 */
public record Bounced(
        String key,
        String name,
        String what,
        boolean period,
        PlannedNumber opening,
        PlannedNumber rebound,
        PlannedNumber settled,
        Verdict verdict,
        Trace trace) {}
