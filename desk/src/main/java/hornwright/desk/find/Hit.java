package hornwright.desk.find;

/** A text that was found, and how well it fits; larger is better. */
public record Hit(Text text, int score) {}
