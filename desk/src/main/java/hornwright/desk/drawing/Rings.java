package hornwright.desk.drawing;

import hornwright.bench.horn.HornPart;
import hornwright.desk.drawing.Mark.Group;
import hornwright.desk.drawing.Mark.Shape;
import java.util.ArrayList;
import java.util.List;

/** The tin itself: the pieces of the tube with their rings, turning lines and the bell rim. */
final class Rings {
    private final Sheet sheet;

    Rings(Sheet sheet) {
        this.sheet = sheet;
    }

    Group tin() {
        List<Mark> marks = new ArrayList<>();
        for (Sheet.Piece piece : sheet.pieces()) {
            marks.add(outline(piece));
        }
        Sheet.Piece last = sheet.pieces().getLast();
        if (last.part() == HornPart.BELL) {
            marks.add(arc(Ink.TURN, last.toMm() - (last.toMm() - last.fromMm()) * 0.06, 0.995));
        }
        marks.add(arc(Ink.BELL_RIM, last.toMm(), 1));
        Sheet.Piece body = sheet.pieces().stream()
                .filter(p -> p.part() == HornPart.BODY)
                .findFirst()
                .orElse(last);
        double length = body.toMm() - body.fromMm();
        marks.add(arc(Ink.TURN, body.fromMm() + length * 0.075, 1));
        marks.add(arc(Ink.TURN, body.toMm() - length * 0.045, 1));
        marks.add(front());
        return new Group("tin", marks);
    }

    private Shape front() {
        double to = sheet.pieces().getLast().toMm();
        Spot left = sheet.spot(0, 0);
        Spot right = sheet.spot(to, 0);
        return Brass.line(Ink.FRONT, List.of(left, right));
    }

    /** An arc across the sheet at one spot of the tube, shortened to a share of its width. */
    private Shape arc(Ink ink, double atMm, double share) {
        return Brass.path(ink, "M" + across(atMm, 180 * share, 1));
    }

    /** The arc from the upper edge to the lower, or back. */
    private String across(double atMm, double angle, int sense) {
        Spot from = sheet.spot(atMm, -angle * sense);
        Spot to = sheet.spot(atMm, angle * sense);
        Spot middle = sheet.spot(atMm, 0);
        Spot control = new Spot(2 * middle.x() - (from.x() + to.x()) / 2, middle.y());
        return Text.at(from) + "Q" + Text.at(control) + " " + Text.at(to);
    }

    private Shape outline(Sheet.Piece piece) {
        int steps = piece.flare() == 1 ? 1 : 14;
        StringBuilder top = new StringBuilder();
        StringBuilder bottom = new StringBuilder();
        double length = piece.toMm() - piece.fromMm();
        double hair = length * 1e-9;
        for (int i = 1; i < steps; i++) {
            double at = piece.fromMm() + length * i / steps;
            top.append("L").append(Text.at(sheet.spot(at, -180)));
            bottom.insert(0, "L" + Text.at(sheet.spot(at, 180)));
        }
        String left = across(piece.fromMm() + hair, 180, -1);
        String right = across(piece.toMm(), 180, 1);
        String start = Text.at(sheet.spot(piece.fromMm() + hair, -180));
        return Brass.path(Ink.SHEET, "M" + start + top + "L" + right + bottom + "L" + left + "Z");
    }

    /** A ring soldered round the tube, standing out a little at the edges. */
    Shape band(Ink ink, double fromMm, double toMm, double standsOut) {
        double over = 180 * (1 + standsOut);
        String right = across(toMm, over, 1);
        String left = across(fromMm, over, -1);
        return Brass.path(ink, "M" + right + "L" + left + "Z");
    }
}
