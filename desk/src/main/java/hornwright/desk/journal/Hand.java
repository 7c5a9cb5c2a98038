package hornwright.desk.journal;

/** Whose hand made an edit, as a person's id, and at which bench. */
public record Hand(String who, String bench) {}
