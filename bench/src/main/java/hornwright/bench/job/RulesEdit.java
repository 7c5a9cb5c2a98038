package hornwright.bench.job;

/** A change to the shop's own rules. */
public sealed interface RulesEdit extends Edit permits Undone {}
