package hornwright.bench.horn;

/**
 * A post that carries the end or middle of a rod.
 */
public record Post(String id, Position at) implements Identified {}
