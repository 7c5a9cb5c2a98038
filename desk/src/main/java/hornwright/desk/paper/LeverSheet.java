package hornwright.desk.paper;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One key from the side at true scale, its numbers and its curves, lying on its side on the sheet.
 *
 * @param title the horn, as the shop calls it
 * @param line number, shop and day
 * @param what which key
 * @param lever the drawing, a millimetre to a millimetre
 * @param numbers what the plan says of it, each with its ±
 * @param curves beside each other
 */
public record LeverSheet(
        String title, String line, String what, Figure lever, List<Fact> numbers, List<Captioned> curves) {
    /** A number in words. */
    public record Fact(String label, String value) {}

    /** A curve under its name. */
    public record Captioned(String caption, Figure figure) {}

    public LeverSheet {
        numbers = List.copyOf(numbers);
        curves = List.copyOf(curves);
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/lever.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(LeverSheet sheet, PaperSize size) {
        /** A drawing so wide leaves no room beside it. */
        private static final double BESIDE_MM = 186;

        private static final int COLUMNS = 3;

        public boolean beside() {
            return sheet.lever().widthMm() <= BESIDE_MM;
        }

        /** The numbers three to a row; the last row may be short. */
        public List<List<Fact>> rows() {
            List<Fact> all = sheet.numbers();
            return IntStream.range(0, (all.size() + COLUMNS - 1) / COLUMNS)
                    .mapToObj(row -> all.subList(COLUMNS * row, Math.min(all.size(), COLUMNS * (row + 1))))
                    .toList();
        }
    }
}
