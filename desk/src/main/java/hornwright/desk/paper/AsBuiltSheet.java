package hornwright.desk.paper;

import java.util.List;

/**
 * What left the factory at one serial, for an owner who only wants to know what was intended: the ruler, then place by
 * place. Every line that speaks of the factory carries its grade; gaps are printed as gaps.
 *
 * @param opening how many horns it rests on
 * @param year when such a number was made, with its bracket; empty where nobody has a table
 * @param axis the numbered edge of the ruler
 */
public record AsBuiltSheet(
        String title, String line, String opening, String year, Figure axis, List<Band> bands, List<Group> groups) {
    public AsBuiltSheet {
        bands = List.copyOf(bands);
        groups = List.copyOf(groups);
    }

    /**
     * One band of the ruler.
     *
     * @param ground how this serial stands to the horns looked at
     */
    public record Band(
            String title,
            String where,
            List<Chip> chips,
            String more,
            Figure band,
            String grade,
            String chance,
            String ground) {
        public Band {
            chips = List.copyOf(chips);
        }
    }

    /** A material with its pattern. */
    public record Chip(Figure swatch, String word) {}

    /** @param gaps places nobody has looked at, in words */
    public record Group(String title, List<Line> lines, String gaps) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /** A place somebody looked at. */
    public record Line(String name, String material, String thickness, String made, String grade) {}

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/as-built.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(AsBuiltSheet sheet, PaperSize size) {}
}
