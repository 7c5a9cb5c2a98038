package hornwright.bench.horn;

/**
 * One thing wrong with a keywork.
 *
 * @param pointer JSON pointer into the keywork file, such as {@code /cups/3/key}
 * @param what what is wrong, in words
 * @param example what would be right
 */
public record Flaw(String pointer, String what, String example) {}
