package hornwright.bench.plan;

/** The hours of one part of the work, as a range. */
public record HourLine(String stage, String words, PlannedNumber hours) {}
