package hornwright.desk.drawing;

import java.util.Locale;

/**
 * What a place is made of, as far as a drawing tells it apart. Each has a pattern of its own, so that black and white
 * suffices.
 */
public enum Stuff {
    LEATHER("leather", "#ffffff", "#555555", 7, 7, "M1.5 1.5h.01M5 3h.01M2.5 5.5h.01", 1.2),
    CORK("cork", "#dddddd", "#333333", 9, 9, "M1 2h2M5.5 1l1.6 .8M3 5.5l1.6 -.6M7 6h1.4M1.5 8l1.4 -.5", 1),
    FELT("felt", "#777777", "#ffffff", 6, 6, "M0 1.5l2.5 1M4 .5l1.5 2M1 5l2 -1.5M4 5.5l1.8 -.9", 0.7),
    TUBING("tubing", "#ffffff", "#444444", 4, 4, "M0 0L4 4M4 0L0 4", 0.6),
    SYNTHETIC("synthetic", "#ffffff", "#333333", 4, 4, "M0 4L4 0", 0.9),
    SHELLAC("shellac", "#bbbbbb", "#222222", 10, 5, "M0 2.5q2.5 -2 5 0t5 0", 1),
    NYLON("nylon", "#333333", "#bbbbbb", 5, 5, "M2.5 2.5h.01", 2.2),
    BRASS("brass", "#dedede", "", 0, 0, "", 0),
    NICKEL("nickel", "#f4f4f4", "", 0, 0, "", 0),
    STEEL("steel", "#666666", "", 0, 0, "", 0),
    PEARL("pearl", "#ffffff", "", 0, 0, "", 0),
    PLATE("plate", "#ececec", "#999999", 5, 5, "M0 2.5h5", 0.5),
    THREAD("thread", "#ffffff", "#333333", 4, 4, "M2 0v4M0 2h4", 0.5),
    OTHER("other", "#ffffff", "", 0, 0, "", 0);

    private final String word;
    private final String ground;
    private final String mark;
    private final double width;
    private final double height;
    private final String path;
    private final double stroke;

    Stuff(String word, String ground, String mark, double width, double height, String path, double stroke) {
        this.word = word;
        this.ground = ground;
        this.mark = mark;
        this.width = width;
        this.height = height;
        this.path = path;
        this.stroke = stroke;
    }

    /** What the words of a material mean; words nobody foresaw are drawn plain with a full outline. */
    public static Stuff of(String material) {
        String said = material.toLowerCase(Locale.ROOT);
        if (has(said, "tubing", "sleeve")) {
            return TUBING;
        }
        if (has(said, "leather", "kid", "skin")) {
            return LEATHER;
        }
        if (has(said, "cork") && !has(said, "synthetic", "rubber")) {
            return CORK;
        }
        if (has(said, "synthetic", "rubber", "foam", "ultrasuede", "microfibre", "neoprene", "teflon")) {
            return SYNTHETIC;
        }
        if (has(said, "felt", "wool")) {
            return FELT;
        }
        return metalOrGlue(said);
    }

    private static Stuff metalOrGlue(String said) {
        if (has(said, "shellac", "glue", "adhesive", "cement", "lacquer stick")) {
            return SHELLAC;
        }
        if (has(said, "nylon", "plastic")) {
            return NYLON;
        }
        if (has(said, "pearl", "abalone")) {
            return PEARL;
        }
        if (has(said, "steel", "bronze wire")) {
            return STEEL;
        }
        if (has(said, "plate", "wash", "lacquer")) {
            return PLATE;
        }
        if (has(said, "nickel")) {
            return NICKEL;
        }
        if (has(said, "brass", "bronze", "copper", "silver")) {
            return BRASS;
        }
        return has(said, "thread", "linen") ? THREAD : OTHER;
    }

    private static boolean has(String said, String... words) {
        for (String word : words) {
            if (said.contains(word)) {
                return true;
            }
        }
        return false;
    }

    public String word() {
        return word;
    }

    /** Whether it is told by a pattern; the rest is plain with a full outline. */
    public boolean patterned() {
        return !path.isEmpty();
    }

    String ground() {
        return ground;
    }

    /** The pattern for the screen: its two colours come from classes. */
    String screenPattern(String id) {
        return "<pattern id=\"%s\" width=\"%s\" height=\"%s\" patternUnits=\"userSpaceOnUse\"><rect class=\"g-%s\" width=\"%s\" height=\"%s\"/><path class=\"k-%s\" d=\"%s\"/></pattern>"
                .formatted(id, Text.n(width), Text.n(height), word, Text.n(width), Text.n(height), word, path);
    }

    /** The pattern for print, in resolved greys. */
    String printPattern(String id) {
        return ("<pattern id=\"%s\" width=\"%s\" height=\"%s\" patternUnits=\"userSpaceOnUse\"><rect width=\"%s\" height=\"%s\" fill=\"%s\"/>"
                        + "<path d=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\" stroke-linecap=\"round\"/></pattern>")
                .formatted(
                        id,
                        Text.n(width),
                        Text.n(height),
                        Text.n(width),
                        Text.n(height),
                        ground,
                        path,
                        mark,
                        Text.n(stroke));
    }
}
