package hornwright.bench.archive;

/**
 * The common root of items that are not independent: one horn, one drawer of papers, one person. Items of one origin
 * count once, however often they were copied.
 */
public record Origin(String id, Kind kind) {}
