package hornwright.desk.drawing;

import hornwright.bench.horn.Place;
import hornwright.desk.drawing.Mark.Handle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The places of the tube itself: corks, rings, rests, engraving, stamps. */
final class PartFigures {
    private final Geometry geometry;
    private final Rings rings;
    private final Obstacles obstacles;

    PartFigures(Geometry geometry, Rings rings) {
        this.geometry = geometry;
        this.obstacles = Obstacles.of(geometry);
        this.rings = rings;
    }

    Handle of(Place place) {
        Spot at = geometry.place(place);
        double mm = place.at().atMm();
        double room = 1 / geometry.sheet().unitsPerMm();
        return switch (place.kind()) {
            case NECK_CORK -> band(place, mm - half(place, 38), mm + half(place, 38), 0.04);
            case TENON -> band(place, mm - half(place, 20), mm + half(place, 20) - 1, 0);
            case NECK_RECEIVER -> band(place, mm - 2 * room, mm + 14 * room, 0.04);
            case SOLDERED_RING -> band(place, mm - 9 * room, mm + 5 * room, 0.02);
            case END_PLUG -> plug(place, mm);
            case NECK_SCREW -> thumbScrew(place, inside(at, 12));
            case NECK_BRACE -> PlaceFigures.handle(place, at, Brass.slab(Ink.FACE, inside(at, 3), 34, 4, 2, 0));
            case BRACE -> brace(place, at);
            case THUMB_REST -> rest(place, free(at, 20, 20));
            case THUMB_HOOK -> hook(place, free(at, 40, 10));
            case STRAP_RING -> ring(place, free(at, 18, 18));
            case FINISH -> finish(place, inside(at, 9));
            case ENGRAVING -> engraving(place, roomFor(at, 130, 124));
            default -> stamp(place, within(at, 22, 12));
        };
    }

    private static double half(Place place, double otherwise) {
        return (place.lengthMm() > 0 ? place.lengthMm() : otherwise) / 2;
    }

    /** A spot pulled in from the cut until a figure of that size lies on the sheet. */
    private Spot inside(Spot spot, double size) {
        var at = geometry.sheet().position(spot);
        Spot edge = geometry.sheet().spot(at.atMm(), 180);
        double reach = edge.y() - Sheet.FRONT - size;
        return new Spot(spot.x(), Math.clamp(spot.y(), Sheet.FRONT - reach, Sheet.FRONT + reach));
    }

    /** A spot near the one wanted, at either side of the cut and over it, where least stands already. */
    private Spot free(Spot wanted, double width, double height) {
        return beside(wanted, width, height, height / 2 + 3);
    }

    /** The same, but on the tin. */
    private Spot within(Spot wanted, double width, double height) {
        return beside(wanted, width, height, -height / 2 - 3);
    }

    private Spot beside(Spot wanted, double width, double height, double out) {
        var at = geometry.sheet().position(wanted);
        if (Math.abs(at.angleDeg()) < 150) {
            return wanted;
        }
        double edge = geometry.sheet().spot(at.atMm(), 180).y() - Sheet.FRONT;
        List<Spot> spots = new ArrayList<>();
        for (double along : new double[] {0, -18, 18, -36, 36}) {
            for (double reach : new double[] {edge + out, -edge - out}) {
                spots.add(new Spot(wanted.x() + along, Sheet.FRONT + reach));
            }
        }
        return emptiest(spots, wanted, width, height);
    }

    /** A spot within the sheet for something as large as an engraving, as near to the cut as it can lie. */
    private Spot roomFor(Spot wanted, double width, double height) {
        List<Spot> spots = new ArrayList<>();
        for (double along : new double[] {-10, -34}) {
            double x = wanted.x() + along;
            double half = geometry.sheet().halfAt(x - width / 2) - height / 2 - 4;
            double turned = Math.abs(geometry.sheet().position(wanted).angleDeg()) / 180 * half;
            spots.add(new Spot(x, Sheet.FRONT + turned));
            spots.add(new Spot(x, Sheet.FRONT - turned));
        }
        return emptiest(spots, wanted, width, height);
    }

    private Spot emptiest(List<Spot> spots, Spot wanted, double width, double height) {
        return spots.stream()
                .min(Comparator.comparingDouble(spot ->
                        obstacles.cost(Box.about(spot, width + 4, height + 4)) + Math.abs(spot.x() - wanted.x())))
                .orElse(wanted);
    }

    private static Handle rest(Place place, Spot at) {
        return PlaceFigures.handle(place, at, Brass.circle(Ink.RIM, at, 9), Brass.circle(Ink.FACE, at, 6.4));
    }

    private Handle band(Place place, double from, double to, double standsOut) {
        double least = geometry.sheet().pieceAt(place.at().atMm()).fromMm() + 0.01;
        Spot token = geometry.sheet().spot(place.at().atMm(), 120);
        return PlaceFigures.handle(
                place,
                token,
                rings.band(
                        Ink.FACE, Math.max(from, place.at().atMm() < 40 ? 0 : from), Math.max(to, least), standsOut));
    }

    /** The film under a cork round the tube shows as a line where the cork ends. */
    Handle film(Place place, Place over) {
        double end = over.at().atMm() + half(over, 38);
        Spot token = geometry.sheet().spot(end + 2, 90);
        return PlaceFigures.handle(place, token, rings.band(Ink.FACE, end, end + 4, 0.02));
    }

    private Handle plug(Place place, double mm) {
        Spot at = geometry.sheet().spot(mm + 0.01, 0);
        Spot beside = new Spot(at.x() - 4, Sheet.FRONT - 104);
        return PlaceFigures.handle(
                place,
                beside,
                Brass.slab(Ink.FACE, beside, 16, 22, 3, 0),
                Brass.slab(Ink.RIM, beside.plus(-10, 0), 5, 28, 2, 0));
    }

    private Handle thumbScrew(Place place, Spot at) {
        return PlaceFigures.handle(
                place,
                at,
                Brass.tube(Ink.TUBE, at.plus(-8, 0), at.plus(8, 0), 3),
                Brass.slab(Ink.FACE, at.plus(9, 0), 6, 14, 3, 0));
    }

    private Handle brace(Place place, Spot at) {
        return PlaceFigures.handle(
                place,
                at,
                Brass.slab(Ink.FACE, at, 26, 6, 3, 90),
                Brass.circle(Ink.DETAIL, at.plus(0, -9), 1.6),
                Brass.circle(Ink.DETAIL, at.plus(0, 9), 1.6));
    }

    private static Handle hook(Place place, Spot at) {
        double out = Math.signum(at.y() - Sheet.FRONT);
        String d = "M" + Text.at(at.plus(-16, 0)) + "q6 " + Text.n(out * 4) + " 12 " + Text.n(out * 3) + "q4 "
                + Text.n(out * 14) + " 16 " + Text.n(out * 14) + "q7 0 8 " + Text.n(-out * 6);
        return PlaceFigures.handle(place, at.plus(0, out * 10), Brass.path(Ink.HIT, d), Brass.path(Ink.FIGURE, d));
    }

    private static Handle ring(Place place, Spot at) {
        return PlaceFigures.handle(place, at, Brass.circle(Ink.HIT, at, 9), Brass.circle(Ink.FIGURE, at, 7));
    }

    /** A swatch of the surface, eight-sided like a polished cut. */
    private static Handle finish(Place place, Spot at) {
        StringBuilder d = new StringBuilder("M");
        for (int i = 0; i < 8; i++) {
            d.append(i == 0 ? "" : "L").append(Text.at(at.along(Math.PI / 8 + i * Math.PI / 4, 7)));
        }
        return PlaceFigures.handle(
                place,
                at,
                Brass.path(Ink.FACE, d + "Z"),
                Brass.line(Ink.DETAIL, List.of(at.plus(-3, 3), at.plus(3, -3))));
    }

    /** A quay, its water and two gulls within two sprays, where makers put their words. */
    private Handle engraving(Place place, Spot c) {
        String waves = "M%s %sq12 -7 24 0t24 0t24 0t24 0M%s %sq12 -7 24 0t24 0t24 0"
                .formatted(Text.n(c.x() - 48), Text.n(c.y() + 22), Text.n(c.x() - 36), Text.n(c.y() + 31));
        String quay = "M%s %sh70v-9h-9v-15h-7v15h-12v-25h-8v25h-12v-13h-7v13h-15z"
                .formatted(Text.n(c.x() - 40), Text.n(c.y() + 14));
        String gulls = "M%s %sq5 -7 9 0q4 -7 9 0M%s %sq4 -6 7 0q3 -6 7 0"
                .formatted(Text.n(c.x() + 22), Text.n(c.y() - 20), Text.n(c.x() + 4), Text.n(c.y() - 30));
        String sprays = ("M%s %sc-22 -18 -22 -56 -4 -78c-3 18 2 26 10 32c-12 2 -14 14 -6 22"
                        + "M%s %sc20 -18 22 -56 4 -78c3 18 -2 26 -10 32c12 2 14 14 6 22")
                .formatted(Text.n(c.x() - 52), Text.n(c.y() + 44), Text.n(c.x() + 52), Text.n(c.y() + 44));
        Mark drawing = new Mark.Upright(
                c,
                List.of(
                        Brass.path(Ink.ENGRAVING, waves + quay + gulls + sprays),
                        Mark.Words.centred(
                                Mark.Type.ENGRAVED, geometry.keywork().maker(), c.plus(0, 58), 15)));
        return PlaceFigures.handle(place, c.plus(0, 44), Brass.slab(Ink.HIT, c, 130, 130, 8, 0), drawing);
    }

    private static Handle stamp(Place place, Spot at) {
        return PlaceFigures.handle(
                place,
                at,
                Brass.slab(Ink.FACE, at, 20, 10, 2, 0),
                Brass.path(
                        Ink.DETAIL,
                        "M%s %sv5M%s %sv5M%s %sv5"
                                .formatted(
                                        Text.n(at.x() - 5),
                                        Text.n(at.y() - 2.5),
                                        Text.n(at.x()),
                                        Text.n(at.y() - 2.5),
                                        Text.n(at.x() + 5),
                                        Text.n(at.y() - 2.5))));
    }
}
