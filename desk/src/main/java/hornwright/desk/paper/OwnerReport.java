package hornwright.desk.paper;

import java.util.List;

/**
 * The plan in words, for the owner to take home and read, or have read aloud.
 *
 * @param title the horn, as the shop calls it
 * @param line what kind of horn, its number, the day, the shop
 * @param opening what is proposed, in one or two sentences
 * @param horn the horn itself, drawn beside the opening
 * @param sections in reading order
 */
public record OwnerReport(String title, String line, String opening, Figure horn, List<Section> sections) {
    /**
     * One heading with what stands under it; without paragraphs and items it is left out.
     *
     * @param paragraphs said first
     * @param items then, as a list
     */
    public record Section(String heading, List<String> paragraphs, List<Item> items) {
        public Section {
            paragraphs = List.copyOf(paragraphs);
            items = List.copyOf(items);
        }

        public boolean isEmpty() {
            return paragraphs.isEmpty() && items.isEmpty();
        }
    }

    /** One thing and what is said of it. */
    public record Item(String name, String words) {}

    public OwnerReport {
        sections = List.copyOf(sections);
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/report.jte", new Page(this, size)), Archival.ACCESSIBLE);
    }

    /** What the template shows. */
    public record Page(OwnerReport report, PaperSize size) {
        public List<Section> sections() {
            return report.sections().stream()
                    .filter(section -> !section.isEmpty())
                    .toList();
        }
    }
}
