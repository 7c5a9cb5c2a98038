package hornwright.desk.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Labels for bags and trays, to be cut apart: two across, each with a code that leads back to the place.
 *
 * @param horn as the shop calls it
 */
public record BagLabels(String horn, String line, List<BagLabel> labels) {
    public BagLabels {
        labels = List.copyOf(labels);
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/labels.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(BagLabels sheet, PaperSize size) {
        public List<List<Drawn>> rows() {
            List<List<Drawn>> rows = new ArrayList<>();
            for (int i = 0; i < sheet.labels().size(); i += 2) {
                rows.add(
                        sheet.labels().subList(i, Math.min(i + 2, sheet.labels().size())).stream()
                                .map(label -> new Drawn(label, Code.of(label.code())))
                                .toList());
            }
            return rows;
        }
    }

    /** A label with its code drawn. */
    public record Drawn(BagLabel label, Code code) {
        public String modules() {
            return Integer.toString(code.modules());
        }

        public String path() {
            return code.path();
        }
    }
}
