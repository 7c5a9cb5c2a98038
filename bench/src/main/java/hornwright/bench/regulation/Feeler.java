package hornwright.bench.regulation;

/**
 * What a feeler found under the centre of a cup, or in a contact, while one key was pressed lightly.
 *
 * @param press id of the key pressed
 * @param at id of the cup felt under or of the link felt into
 * @param gapMm 0 where no leaf went in
 * @param uMm one standard uncertainty
 */
public record Feeler(String press, String at, double gapMm, double uMm) {
    public Feeler {
        if (!(gapMm >= 0) || !(uMm > 0)) {
            throw new IllegalArgumentException("a feeler reads a gap, 0 or more, with an uncertainty above 0");
        }
    }

    /** Whether it was read at this spot. */
    boolean isAt(Watch watch) {
        return watch.press().equals(press) && watch.at().equals(at);
    }
}
