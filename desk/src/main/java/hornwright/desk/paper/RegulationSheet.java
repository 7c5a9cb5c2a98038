package hornwright.desk.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Regulation for the wall: what each finger closes with its gaps magnified, and every contact in the order it is set with
 * what to add or take and room for what came of it.
 *
 * @param title the horn, as the shop calls it
 * @param line number, shop and day
 * @param sum what it comes to, one sentence
 * @param packed where it comes to once new material has packed, a sentence or two
 * @param stacks one drawing a finger
 */
public record RegulationSheet(
        String title, String line, String sum, String packed, List<Figure> stacks, List<Line> contacts) {
    public RegulationSheet {
        stacks = List.copyOf(stacks);
        contacts = List.copyOf(contacts);
    }

    /**
     * One contact.
     *
     * @param wrongBy "0.14 ± 0.01", too thick above zero; empty while not felt
     * @param settled what was accepted; empty when nothing was
     */
    public record Line(String name, String wrongBy, String work, String settled, String after) {}

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/regulation.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(RegulationSheet sheet, PaperSize size) {
        private static final double ROW_MM = 172;

        /** The drawings beside each other as far as the sheet is wide. */
        public List<List<Figure>> rows() {
            List<List<Figure>> rows = new ArrayList<>();
            double used = ROW_MM;
            for (Figure stack : sheet.stacks()) {
                if (used + stack.widthMm() > ROW_MM) {
                    rows.add(new ArrayList<>());
                    used = 0;
                }
                rows.getLast().add(stack);
                used += stack.widthMm();
            }
            return rows;
        }
    }
}
