package hornwright.bench.plan;

import hornwright.bench.regulation.Correction;
import org.jspecify.annotations.Nullable;

/**
 * One contact between two keys, and what to do at it.
 *
 * @param link id
 * @param error what it is wrong by, too thick above zero; null while no reading bears on it
 * @param change what to add, below zero to take; null where it is left
 * @param pulls of the sanding strip, where it is sanded
 * @param turns of its screw, in above zero; null without a screw or where it is left
 * @param told whether the readings single it out; if not, another contact of the same touch could be altered instead
 */
public record PlannedLink(
        String link,
        @Nullable PlannedNumber error,
        @Nullable PlannedNumber change,
        @Nullable PlannedNumber pulls,
        @Nullable PlannedNumber turns,
        Correction.Work work,
        boolean told) {}
