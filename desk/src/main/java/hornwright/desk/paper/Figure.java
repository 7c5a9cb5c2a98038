package hornwright.desk.paper;

import hornwright.desk.drawing.Print;
import hornwright.desk.drawing.PrintWord;
import java.util.List;
import java.util.Locale;

/**
 * A drawing on a sheet: shapes as SVG, words laid over them as text.
 *
 * @param shapes children of an svg element, in units of {@code viewBox}
 * @param viewBox as SVG writes it
 * @param words in millimetres from the upper left corner of the figure
 * @param says what it shows, for who cannot see it
 */
public record Figure(String shapes, String viewBox, double widthMm, double heightMm, List<Label> words, String says) {
    public Figure {
        words = List.copyOf(words);
    }

    /** A drawing for paper, its words laid over it as text. */
    public static Figure of(Print print) {
        List<Label> words = print.words().stream().map(Figure::label).toList();
        return new Figure(print.shapes(), print.viewBox(), print.widthMm(), print.heightMm(), words, print.says());
    }

    private static Label label(PrintWord word) {
        Label.Anchor anchor = switch (word.align()) {
            case START -> Label.Anchor.START;
            case MIDDLE -> Label.Anchor.MIDDLE;
            case END -> Label.Anchor.END;
        };
        Label.Face face = switch (word.face()) {
            case PLAIN -> Label.Face.TEXT;
            case STRONG -> Label.Face.BOLD;
            case ENGRAVED -> Label.Face.ENGRAVED;
        };
        return Label.of(word.text(), word.xMm(), word.yMm(), word.sizeMm(), anchor, face);
    }

    /** The figure as markup. */
    public String html() {
        return String.format(
                        Locale.ROOT,
                        "<div style=\"position:relative;width:%.2fmm;height:%.2fmm\">"
                                + "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" viewBox=\"%s\" alt=\"%s\">",
                        widthMm,
                        heightMm,
                        widthMm,
                        heightMm,
                        viewBox,
                        says.replace("&", "&amp;").replace("\"", "&quot;"))
                + shapes
                + "</svg>"
                + String.join("", words.stream().map(Label::html).toList())
                + "</div>";
    }
}
