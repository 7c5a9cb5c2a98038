package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/**
 * How good the evidence for a claim is. A rule, not a percentage. Rules are tried from top to bottom of this table;
 * counts are of independent origins, each with the strength of its best item.
 *
 * <table>
 * <caption>Rules</caption>
 * <tr><td>Refuted<td>the contradicting side alone would be Established or Well supported, support is Reported or none
 * <tr><td>Contested<td>a contradicting item of strength 2 or 3 is not resolved in writing
 * <tr><td>Established<td>two of strength 3, or one 3 and two 2, over at least two kinds, search log filled
 * <tr><td>Well supported<td>one 3 and another of at least 2, or three of 2
 * <tr><td>Indicated<td>one of 2 or 3, or three of 1
 * <tr><td>Reported<td>anything weaker
 * <tr><td>Not assessed<td>nothing supports it
 * </table>
 *
 * <p>The constants stand from the best standing to the worst.
 */
public enum Grade implements Word {
    ESTABLISHED('A', "established"),
    WELL_SUPPORTED('B', "well supported"),
    INDICATED('C', "indicated"),
    REPORTED('D', "reported"),
    NOT_ASSESSED('N', "not assessed"),
    CONTESTED('X', "contested"),
    REFUTED('R', "refuted");

    /** Stored with every grading, so an old grade can be told from one by newer rules. */
    public static final int RULES = 1;

    private final char letter;
    private final String word;

    Grade(char letter, String word) {
        this.letter = letter;
        this.word = word;
    }

    public char letter() {
        return letter;
    }

    @Override
    public String word() {
        return word;
    }

    /** Whether this grade stands at least as high as another. */
    public boolean isAtLeast(Grade other) {
        return compareTo(other) <= 0;
    }

    /** One grade lower, as for a serial between two that agree. What is Reported or below stays. */
    public Grade lowered() {
        return switch (this) {
            case ESTABLISHED -> WELL_SUPPORTED;
            case WELL_SUPPORTED -> INDICATED;
            case INDICATED -> REPORTED;
            case REPORTED, NOT_ASSESSED, CONTESTED, REFUTED -> this;
        };
    }

    /** This grade, but not above another. */
    public Grade atMost(Grade ceiling) {
        return isAtLeast(ceiling) ? ceiling : this;
    }
}
