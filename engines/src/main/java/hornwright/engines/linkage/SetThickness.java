package hornwright.engines.linkage;

/** The thickness that makes a link's gap 0 with every cup of its set closed, and its difference from the present, m. */
public record SetThickness(String link, double thickness, double change) {}
