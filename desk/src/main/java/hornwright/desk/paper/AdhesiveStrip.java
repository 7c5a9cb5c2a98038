package hornwright.desk.paper;

import hornwright.bench.adhesive.AdhesiveSheet;
import hornwright.bench.adhesive.RoomRules;
import hornwright.bench.care.Hazard;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the adhesives of one horn come off, for the wall: group by group the way for what was found on this finish, with a box
 * to tick, the cautions of those ways, and the rules of the room.
 *
 * @param finish of the keys, or that nobody said
 * @param cautions each once
 */
public record AdhesiveStrip(
        String title, String line, String finish, List<Part> parts, List<String> cautions, List<String> room) {
    public AdhesiveStrip {
        parts = List.copyOf(parts);
        cautions = List.copyOf(cautions);
        room = List.copyOf(room);
    }

    /** Under pads, or under cork and felt. */
    public record Part(String name, List<Row> rows) {
        public Part {
            rows = List.copyOf(rows);
        }
    }

    /** One group of keys: what is there and each way it comes off. */
    public record Row(String group, int places, String says, List<String> ways) {
        public Row {
            ways = List.copyOf(ways);
        }
    }

    public static AdhesiveStrip of(SheetAsked asked, SheetHead head) {
        SheetAnswer answer = AdhesiveSheet.of(asked);
        Set<Hazard> hazards = new LinkedHashSet<>();
        List<Part> parts = new ArrayList<>();
        for (boolean underPads : new boolean[] {true, false}) {
            List<Row> rows = AdhesiveSheet.batches(asked.keywork()).stream()
                    .filter(batch -> batch.underPads() == underPads)
                    .map(batch -> row(batch, answer.line(batch.place()), hazards))
                    .toList();
            parts.add(new Part(underPads ? "Under pads" : "Under corks and felts", rows));
        }
        List<String> cautions = hazards.stream()
                .map(hazard -> "%s: %s".formatted(capital(hazard.work()), hazard.inOneLine()))
                .toList();
        return new AdhesiveStrip(
                head.title(),
                head.line(),
                AdhesiveSheet.finishOf(asked)
                        .map(finish -> "Finish of the keys: " + finish.word())
                        .orElse("Finish of the keys not said: every way is that of the tenderest"),
                parts,
                cautions,
                RoomRules.all());
    }

    private static Row row(AdhesiveSheet.Batch batch, Optional<SheetLine> line, Set<Hazard> hazards) {
        List<Remedy> ways = line.map(SheetLine::remedies).orElse(List.of());
        ways.forEach(way -> hazards.addAll(way.cautions()));
        return new Row(
                batch.group().title(),
                batch.places(),
                line.map(SheetLine::says).orElse(""),
                ways.stream().map(Remedy::what).toList());
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }

    public byte[] pdf(PaperSize size) {
        return Pdf.render(PaperTemplates.render("paper/adhesives.jte", new Page(this, size)), Archival.VISUAL);
    }

    /** What the template shows. */
    public record Page(AdhesiveStrip strip, PaperSize size) {}
}
