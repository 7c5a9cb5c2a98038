package hornwright.desk.paper;

import java.util.Locale;

/**
 * A piece of text laid over a drawing. The renderer turns text inside an SVG into outlines, which nobody can search or
 * read aloud; text laid over it stays text.
 *
 * @param xMm of the anchor, from the left edge of the drawing
 * @param yMm of the base line, from its upper edge
 * @param sizeMm of the type
 * @param turnDeg clockwise about the anchor
 */
public record Label(
        String text, double xMm, double yMm, double sizeMm, Anchor anchor, Face face, String colour, double turnDeg) {
    /** Which end of the text stands at the anchor. */
    public enum Anchor {
        START("left", 0),
        MIDDLE("center", 0.5),
        END("right", 1);

        private final String align;
        private final double share;

        Anchor(String align, double share) {
            this.align = align;
            this.share = share;
        }
    }

    /** The three faces a sheet is set in. */
    public enum Face {
        TEXT("font-family:Bench"),
        BOLD("font-family:Bench;font-weight:700"),
        ENGRAVED("font-family:Engraver;font-style:italic");

        private final String css;

        Face(String css) {
            this.css = css;
        }
    }

    /** Height of the base line within a line of text, and the height of that line, as shares of the type size. */
    private static final double ASCENT = 0.928;

    private static final double LINE = 1.164;
    /** Wider than any label; the text stands at its anchor within it. */
    private static final double BOX = 120;

    public static Label of(String text, double xMm, double yMm, double sizeMm, Anchor anchor, Face face) {
        return new Label(text, xMm, yMm, sizeMm, anchor, face, "#000000", 0);
    }

    /** The label as markup, to stand in a positioned box that also holds the drawing. */
    public String html() {
        String turn = turnDeg == 0
                ? ""
                : String.format(
                        Locale.ROOT,
                        ";transform:rotate(%.1fdeg);transform-origin:%.1f%% %.1f%%",
                        turnDeg,
                        100 * anchor.share,
                        100 * ASCENT / LINE);
        return String.format(
                Locale.ROOT,
                "<div style=\"position:absolute;white-space:nowrap;left:%.2fmm;top:%.2fmm;width:%.0fmm;height:%.2fmm;"
                        + "line-height:%.2fmm;font-size:%.2fmm;text-align:%s;color:%s;%s%s\">%s</div>",
                xMm - BOX * anchor.share,
                yMm - ASCENT * sizeMm,
                BOX,
                LINE * sizeMm,
                LINE * sizeMm,
                sizeMm,
                anchor.align,
                colour,
                face.css,
                turn,
                escaped());
    }

    private String escaped() {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
