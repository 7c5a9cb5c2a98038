package hornwright.desk.paper;

import java.util.List;

/**
 * What hangs on the wall while a horn is on the bench: pads, heights, and the order of regulation.
 *
 * @param title the horn, as the shop calls it
 * @param line what kind of horn, its number, the day it was printed
 * @param map the unrolled horn with size, thickness and middle of each pad beside its cup
 * @param heights in bench order
 * @param regulation in the order it is done
 * @param provisional what must happen before these figures are final; empty when nothing
 */
public record BenchSheet(
        String title,
        String line,
        Figure map,
        List<HeightLine> heights,
        List<RegulationLine> regulation,
        List<String> provisional) {
    /** A height at the front edge: before, target with its ±, and the foot that gives it; the rest is written by hand. */
    public record HeightLine(String name, String before, String target, String foot) {}

    /** A step of regulation: what closes what, how it is done, and what must be looked at again after a bend there. */
    public record RegulationLine(String words, String how, String recheck) {}

    public BenchSheet {
        heights = List.copyOf(heights);
        regulation = List.copyOf(regulation);
        provisional = List.copyOf(provisional);
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/bench.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(BenchSheet sheet, PaperSize size) {}
}
