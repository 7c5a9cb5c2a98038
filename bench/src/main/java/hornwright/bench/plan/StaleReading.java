package hornwright.bench.plan;

/** A reading that no longer counts because of work done since. */
public record StaleReading(String reading, String why) {}
