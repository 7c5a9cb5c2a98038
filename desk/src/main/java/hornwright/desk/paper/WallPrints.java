package hornwright.desk.paper;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What hangs beside the bench sheet: the strip of removal, the pieces to cut by the sheet they come from, every spot that
 * can leak with a box to tick, and a label for the bag of each rod.
 *
 * @param title the horn, as the shop calls it
 * @param line number and shop
 * @param removal in the order the rods come off
 * @param cuts by stocked sheet
 * @param leaks in the order they are tried
 * @param cautions of trying for leaks
 */
public record WallPrints(
        String title, String line, List<Turn> removal, List<FromSheet> cuts, List<Leak> leaks, List<String> cautions) {
    public WallPrints {
        removal = List.copyOf(removal);
        cuts = List.copyOf(cuts);
        leaks = List.copyOf(leaks);
        cautions = List.copyOf(cautions);
    }

    /** A rod on its turn: what it is called, the keys that come off with it, what must be off before. */
    public record Turn(int number, String rod, String keys, String after) {}

    /** All pieces cut from one sheet. */
    public record FromSheet(String sheet, List<Piece> pieces) {
        public FromSheet {
            pieces = List.copyOf(pieces);
        }
    }

    /** One piece: where it goes, its shape, the thickness it is cut at, how it comes to its end. */
    public record Piece(String place, String form, String cut, String method) {}

    /** One spot that can leak and how it is tried. */
    public record Leak(String site, String how) {}

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/wall.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(WallPrints wall, PaperSize size) {
        /** The bag labels two to a row; the last row may be short. */
        public List<List<Turn>> bags() {
            List<Turn> turns = wall.removal();
            return IntStream.range(0, (turns.size() + 1) / 2)
                    .mapToObj(row -> turns.subList(2 * row, Math.min(turns.size(), 2 * row + 2)))
                    .toList();
        }
    }
}
