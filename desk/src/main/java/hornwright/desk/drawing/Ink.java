package hornwright.desk.drawing;

/**
 * What a line or face of a drawing is. On the screen the class decides how it looks; on paper it is black on white with
 * light grey rims.
 */
enum Ink {
    SHEET("sheet", "#ffffff", "#111111", 1.1),
    RING("ring", "#ececec", "#111111", 1),
    TURN("turn", "none", "#777777", 1),
    BELL_RIM("bell-rim", "none", "#111111", 4.5),
    FRONT("front", "none", "#777777", 0.9),
    ENGRAVING("engraved-line", "none", "#777777", 1.1),
    STEEL("steel", "#777777", "#111111", 0.5),
    TUBE("tube", "#ffffff", "#111111", 0.9),
    ARM("arm", "#ececec", "#111111", 0.9),
    CROSSING("crossing", "none", "#777777", 1),
    POST("post", "#bdbdbd", "#111111", 0.9),
    SLOT("slot", "none", "#111111", 1),
    TOUCH("touch", "#ffffff", "#111111", 1),
    SHINE("shine", "none", "#999999", 1),
    RIM("rim", "#ececec", "#111111", 1.1),
    FACE("face", "#ffffff", "#111111", 0.8),
    SEAT("seat", "none", "#444444", 0.7),
    GUARD("guard", "none", "#777777", 2.2),
    GUARD_FOOT("guard-foot", "#bdbdbd", "#111111", 0.7),
    BEAD("bead", "none", "#777777", 1.8),
    SPRING("spring", "none", "#111111", 1.3),
    FIGURE("figure", "none", "#111111", 2.6),
    DETAIL("detail", "none", "#111111", 0.7),
    HIT("hit", "none", "none", 0),
    TOKEN_BACK("token-back", "#ffffff", "#111111", 0.6),
    TOKEN("token", "none", "#111111", 2),
    BODY("body-wall", "none", "#111111", 3),
    GHOST("ghost", "none", "#777777", 0.9),
    LEADER("leader", "none", "#777777", 0.7),
    /** Of a graph: its axes, the curve it is about, another beside it, what is wanted, what is not known. */
    AXIS("axis", "none", "#111111", 0.8),
    CURVE("curve", "none", "#111111", 2),
    OTHER_CURVE("other-curve", "none", "#777777", 1.2),
    WANTED("wanted", "#ececec", "none", 0),
    DOUBT("doubt", "#dddddd", "none", 0),
    PEARL("dot", "#ffffff", "#111111", 1.4);

    private final String css;
    private final String fill;
    private final String stroke;
    private final double width;

    Ink(String css, String fill, String stroke, double width) {
        this.css = css;
        this.fill = fill;
        this.stroke = stroke;
        this.width = width;
    }

    String css() {
        return css;
    }

    /** Resolved colours for paper; the fill may be replaced by a pattern. */
    String print(String fillInstead) {
        StringBuilder out = new StringBuilder("fill=\"").append(fillInstead.isEmpty() ? fill : fillInstead);
        out.append("\" stroke=\"").append(stroke).append('"');
        if (!stroke.equals("none")) {
            out.append(" stroke-width=\"").append(Text.n(width)).append('"');
            out.append(fill.equals("none") ? " stroke-linecap=\"round\"" : "");
            out.append(dashes());
        }
        return out.toString();
    }

    private String dashes() {
        return switch (this) {
            case FRONT -> " stroke-dasharray=\"18 4 3 4\"";
            case SEAT -> " stroke-dasharray=\"3 2\"";
            case GHOST -> " stroke-dasharray=\"5 3\"";
            case OTHER_CURVE -> " stroke-dasharray=\"4 3\"";
            case CROSSING -> " stroke-dasharray=\"2 4\"";
            default -> "";
        };
    }
}
