package hornwright.desk.drawing;

/**
 * A word on a printed drawing.
 *
 * @param xMm of the end or middle that {@code align} names
 * @param yMm of the base line
 * @param sizeMm of the type
 */
public record PrintWord(String text, double xMm, double yMm, double sizeMm, Align align, Face face) {
    /** Which part of the word stands at its spot. */
    public enum Align {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String anchor;

        Align(String anchor) {
            this.anchor = anchor;
        }

        String anchor() {
            return anchor;
        }
    }

    /** How a word is set. */
    public enum Face {
        PLAIN(""),
        STRONG(" font-weight=\"700\""),
        ENGRAVED(" font-style=\"italic\"");

        private final String attributes;

        Face(String attributes) {
            this.attributes = attributes;
        }

        String attributes() {
            return attributes;
        }
    }
}
