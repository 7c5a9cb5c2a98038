package hornwright.desk.paper;

import hornwright.desk.paper.OwnerReport.Section;
import java.util.List;

/**
 * What the owner takes home with the horn: how it was and how it is, what stays, what cannot be undone, what is left
 * imperfect, how to look after it, and when it is looked at again.
 *
 * @param title the horn, as the shop calls it
 * @param line number, shop, day, and the edit it was made from
 * @param compared measured before and after, in bench order
 * @param sections in reading order
 */
public record HandOver(
        String title, String line, String opening, Figure horn, List<Compared> compared, List<Section> sections) {
    /** One thing measured when the horn came and again when it was done; each with its unit and ±. */
    public record Compared(String what, String before, String after) {}

    public HandOver {
        compared = List.copyOf(compared);
        sections = List.copyOf(sections);
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/handover.jte", new Page(this, size)), Archival.ACCESSIBLE);
    }

    /** What the template shows. */
    public record Page(HandOver handOver, PaperSize size) {
        public List<Section> sections() {
            return handOver.sections().stream()
                    .filter(section -> !section.isEmpty())
                    .toList();
        }
    }
}
