package hornwright.desk.web.view;

/** A unit that lengths may be shown and typed in. */
public record UnitChoice(String word, String label, boolean current) {}
