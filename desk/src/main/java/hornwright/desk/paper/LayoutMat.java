package hornwright.desk.paper;

import hornwright.desk.paper.Label.Anchor;
import hornwright.desk.paper.Label.Face;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The layout mat: every pad at true size, in the order the keys come off, to lay keys and pads on. A bar of 100 mm shows
 * whether the printer kept the size.
 *
 * @param title the horn, as the shop calls it
 * @param discs in order of removal
 * @param unknown names of the pads whose diameter is not known yet
 */
public record LayoutMat(String title, List<MatDisc> discs, List<String> unknown) {
    private static final int NAMED = 8;

    public LayoutMat {
        discs = List.copyOf(discs);
        unknown = List.copyOf(unknown);
    }

    /** A mat with every pad on it. */
    public LayoutMat(String title, List<MatDisc> discs) {
        this(title, discs, List.of());
    }

    /** What is said of pads whose size nobody knows yet; empty when there is none. */
    private String stillUnknown() {
        if (unknown.isEmpty()) {
            return "";
        }
        String names = String.join(", ", unknown.subList(0, Math.min(NAMED, unknown.size())));
        String more = unknown.size() > NAMED ? " and " + (unknown.size() - NAMED) + " more" : "";
        return "Not on this mat until the cup is measured: " + names + more + ".";
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/mat.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(LayoutMat mat, PaperSize size) {
        public List<MatLayout.Sheet> sheets() {
            List<MatLayout.Sheet> sheets = MatLayout.of(mat.discs());
            return sheets.isEmpty() ? List.of(new MatLayout.Sheet(List.of(), List.of())) : sheets;
        }

        /** Millimetres with two decimals and a point, as SVG wants them. */
        public String mm(double value) {
            return String.format(Locale.ROOT, "%.2f", value);
        }

        /** All words of a sheet, laid over its drawing. */
        public String words(int index) {
            MatLayout.Sheet sheet = sheets().get(index);
            List<Label> labels = new ArrayList<>();
            labels.add(Label.of(mat.title(), 0, 8, 7, Anchor.START, Face.ENGRAVED));
            labels.add(Label.of(
                    "Lay each key on its pad as it comes off: left to right, row by row.",
                    0,
                    14,
                    3.4,
                    Anchor.START,
                    Face.TEXT));
            labels.add(Label.of(mat.stillUnknown(), 0, 18.5, 3, Anchor.START, Face.TEXT));
            sheet.discs().forEach(standing -> labels.addAll(words(standing)));
            sheet.brackets()
                    .forEach(bracket -> labels.add(Label.of(
                            bracket.group(), bracket.middle(), bracket.y() + 3, 3, Anchor.MIDDLE, Face.ENGRAVED)));
            labels.add(Label.of("0", 0, 248, 3.2, Anchor.START, Face.TEXT));
            labels.add(Label.of("100 mm", 100, 248, 3.2, Anchor.MIDDLE, Face.TEXT));
            labels.add(Label.of(
                    "If this bar is not 100 mm long, print again at full size.",
                    106,
                    244,
                    3.2,
                    Anchor.START,
                    Face.TEXT));
            String which = "Sheet %d of %d".formatted(index + 1, sheets().size());
            labels.add(Label.of(which, 190, 248, 3.2, Anchor.END, Face.TEXT));
            return String.join("", labels.stream().map(Label::html).toList());
        }

        private static List<Label> words(MatLayout.Standing standing) {
            MatDisc disc = standing.disc();
            String diameter = String.format(Locale.ROOT, "%.1f", disc.diameterMm());
            return List.of(
                    Label.of(diameter, standing.x(), standing.y() + 1.5, 4.4, Anchor.MIDDLE, Face.TEXT),
                    Label.of(disc.name(), standing.x(), standing.wordsY(), 3.4, Anchor.MIDDLE, Face.BOLD),
                    Label.of(disc.note(), standing.x(), standing.wordsY() + 3.6, 3, Anchor.MIDDLE, Face.TEXT));
        }
    }
}
