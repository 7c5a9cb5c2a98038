package hornwright.bench.plan.instead;

import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.bounce.Bounced;
import org.jspecify.annotations.Nullable;

/**
 * One material at a place.
 *
 * @param thickness of the piece, mm
 * @param stiffness pressure at full strain, MPa
 * @param mass of the piece, g
 * @param height how much higher the cup stands once all has packed, against the maker's material, mm; null where the place
 *     sets no height
 * @param gives how far the piece gives under one newton, mm: what a finger feels as soft or hard
 * @param bounce the key let go on it; null where no key lands there
 * @param sheet thickness of the sheet on the shelf it is cut from, mm; null where none is thick enough
 */
public record Substitute(
        String material,
        Belongs belongs,
        Look look,
        PlannedNumber thickness,
        PlannedNumber stiffness,
        PlannedNumber mass,
        @Nullable PlannedNumber height,
        PlannedNumber gives,
        @Nullable Bounced bounce,
        @Nullable PlannedNumber sheet) {}
