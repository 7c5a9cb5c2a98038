package hornwright.bench.sheet;

import hornwright.bench.plan.PlannedNumber;

/** A number with what it is called on the sheet. */
public record Told(String label, PlannedNumber number) {}
