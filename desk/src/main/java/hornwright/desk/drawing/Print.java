package hornwright.desk.drawing;

import java.util.List;
import java.util.Locale;

/**
 * A drawing for paper: black on white, patterns in greys, every colour resolved, no classes and no styles. Words are kept
 * apart from shapes so that a sheet can set them as text.
 *
 * @param shapes children of an svg element
 * @param viewBox as SVG writes it
 * @param words in millimetres from the upper left corner
 * @param says what is drawn, for who cannot see it
 */
public record Print(
        String shapes, String viewBox, double widthMm, double heightMm, List<PrintWord> words, String says) {
    public Print {
        words = List.copyOf(words);
    }

    /** The drawing by itself, its words within it. */
    public String svg() {
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" viewBox=\"%s\">",
                widthMm,
                heightMm,
                viewBox));
        out.append("<title>").append(Text.escaped(says)).append("</title>").append(shapes);
        double unit = Double.parseDouble(viewBox.split(" ")[2]) / widthMm;
        for (PrintWord word : words) {
            out.append(
                    ("<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" font-family=\"%s\"%s fill=\"#000000\">%s</text>")
                            .formatted(
                                    Text.n(word.xMm() * unit),
                                    Text.n(word.yMm() * unit),
                                    Text.n(word.sizeMm() * unit),
                                    word.align().anchor(),
                                    word.face() == PrintWord.Face.ENGRAVED ? "serif" : "sans-serif",
                                    word.face().attributes(),
                                    Text.escaped(word.text())));
        }
        return out.append("</svg>\n").toString();
    }
}
