package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
import hornwright.desk.drawing.Mark.Handle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The figure of every place, drawn as what it is: a slip of cork, the middle of a pad, a spring with its hook. Every
 * place has exactly one figure and every figure is a handle.
 */
final class PlaceFigures {
    /** How far apart two slips stand that would lie on each other. */
    private static final double BESIDE = 9;

    private final Geometry geometry;
    private final PartFigures parts;

    PlaceFigures(Geometry geometry, Rings rings) {
        this.geometry = geometry;
        this.parts = new PartFigures(geometry, rings);
    }

    /** The layers from the tin upwards; a place lies on the layer its kind names. */
    enum Level {
        TIN,
        GUARD,
        CUP,
        KEY
    }

    Level level(Place place) {
        return switch (place.kind()) {
            case ADHESIVE -> bead(place) ? Level.CUP : Level.KEY;
            case NECK_CORK,
                    TENON,
                    NECK_RECEIVER,
                    SOLDERED_RING,
                    FINISH,
                    ENGRAVING,
                    STAMP,
                    BRACE,
                    NECK_BRACE,
                    END_PLUG,
                    THUMB_REST,
                    THUMB_HOOK,
                    STRAP_RING,
                    NECK_SCREW -> Level.TIN;
            case KEY_GUARD, GUARD_SCREW, PIP -> Level.GUARD;
            case PAD -> Level.CUP;
            case RESONATOR,
                    RIVET,
                    PAD_CENTRE,
                    FOOT,
                    BUMPER,
                    GUARD,
                    LINK,
                    SLEEVE,
                    SPRING,
                    PEARL,
                    ROLLER,
                    SCREW_HEAD,
                    SADDLE,
                    GUIDE,
                    UPPER_STOP,
                    ROCKER_CONTACT -> Level.KEY;
        };
    }

    Handle of(Place place) {
        Spot at = geometry.place(place);
        return switch (place.kind()) {
            case PAD -> pad(place, at);
            case RESONATOR, RIVET, PAD_CENTRE, PIP -> middle(place, at);
            case ADHESIVE -> adhesive(place, at);
            case KEY_GUARD, GUARD, GUARD_SCREW -> guard(place, at);
            case FOOT -> slip(place, at, 10, 6.5, 0);
            case BUMPER, UPPER_STOP, ROCKER_CONTACT -> slip(place, bumper(place, at), 8.5, 8.5, 45);
            case LINK -> slip(place, clear(place, at), 6.5, 6.5, 45);
            case SLEEVE -> slip(place, clear(place, at), 11, 5.5, 20);
            case SADDLE -> slip(place, at, 5, 9, 0);
            case GUIDE -> slip(place, at.plus(0, 6), 9, 5, 0);
            case SPRING -> spring(place, at);
            case PEARL -> pearl(place, at);
            case ROLLER -> roller(place, at);
            case SCREW_HEAD -> screw(place, at);
            case NECK_CORK,
                    TENON,
                    NECK_RECEIVER,
                    NECK_SCREW,
                    NECK_BRACE,
                    END_PLUG,
                    THUMB_REST,
                    THUMB_HOOK,
                    STRAP_RING,
                    BRACE,
                    SOLDERED_RING,
                    FINISH,
                    ENGRAVING,
                    STAMP -> parts.of(place);
        };
    }

    static Handle handle(Place place, Spot token, Mark... marks) {
        return new Handle(place, List.of(marks), token);
    }

    private Handle pad(Place place, Spot at) {
        double r = geometry.cupOf(place)
                .map(geometry::radius)
                .orElseGet(() -> geometry.sheet().radius(place.diameterMm()));
        double hole = geometry.cupOf(place)
                .map(cup ->
                        geometry.sheet().radius(geometry.keywork().holeOf(cup).diameterMm()))
                .orElse(r * 0.8);
        List<Mark> marks = new ArrayList<>(List.of(
                Brass.circle(Ink.HIT, at, Math.max(r + 4, 19)),
                Brass.circle(Ink.RIM, at, r),
                Brass.circle(Ink.FACE, at, Math.max(r - 2.6, 2.4))));
        if (hole > 3) {
            marks.add(Brass.circle(Ink.SEAT, at, hole));
        }
        return new Handle(place, marks, at.plus(-r * 0.72, -r * 0.72));
    }

    private Handle middle(Place place, Spot at) {
        double r = geometry.cupOf(place).map(geometry::radius).orElse(8.0);
        double size = geometry.cupOf(place)
                .map(cup -> geometry.sheet().radius(cup.centre().diameterMm()))
                .filter(d -> d > 0)
                .orElse(1.6);
        Spot token = at.plus(r * 0.5, -r * 0.5);
        return switch (place.kind()) {
            case RESONATOR ->
                handle(
                        place,
                        token,
                        Brass.circle(Ink.FACE, at, Math.min(size, r * 0.6)),
                        Brass.circle(Ink.DETAIL, at, 1.4));
            case RIVET -> handle(place, token, Brass.circle(Ink.FACE, at, 2.4), Brass.circle(Ink.DETAIL, at, 0.8));
            case PIP -> handle(place, token, Brass.circle(Ink.HIT, at, r + 5), Brass.circle(Ink.FACE, at, r + 2.6));
            default -> handle(place, token, Brass.circle(Ink.FACE, at, Math.min(1.8, r * 0.35)));
        };
    }

    /** Whether an adhesive lies under a pad, where it shows as a bead all round. */
    private boolean bead(Place place) {
        return over(place).map(over -> over.kind() == PlaceKind.PAD).orElse(true);
    }

    private Optional<Place> over(Place place) {
        return Optional.ofNullable(place.beneath()).flatMap(geometry.keywork().places()::find);
    }

    /** Under a pad a bead shows all round; under a cork or felt a film shows along one edge. */
    private Handle adhesive(Place place, Spot at) {
        Optional<Place> over = over(place);
        if (over.isPresent() && !bead(place)) {
            return film(place, over.get());
        }
        double r = geometry.cupOf(place).map(geometry::radius).orElse(8.0);
        return handle(place, at.plus(-r * 0.6, r * 0.6), Brass.circle(Ink.BEAD, at, Math.max(r - 2.4, 2.4)));
    }

    private Handle film(Place place, Place over) {
        if (level(over) == Level.TIN) {
            return parts.film(place, over);
        }
        Spot at = of(over).token();
        Spot edge = over.kind() == PlaceKind.FOOT ? at.plus(0, 4.4) : at.plus(4.2, 4.2);
        return handle(place, edge, Brass.slab(Ink.FACE, edge, 8, 2, 0.8, over.kind() == PlaceKind.FOOT ? 0 : -45));
    }

    /** The felt on the body lies beyond the foot that meets it, so that both are seen. */
    private Spot bumper(Place place, Spot at) {
        Spot hinge = geometry.keyOf(place)
                .map(key -> geometry.hinge(key, place.at().atMm()))
                .orElse(at);
        if (place.kind() == PlaceKind.BUMPER && hinge.distance(at) > 3) {
            return at.along(hinge.bearing(at), 9);
        }
        return place.kind() == PlaceKind.UPPER_STOP ? at.plus(-7, -7) : at.plus(7, -7);
    }

    /** A slip that would hide a foot, or a sleeve before it, lies beside it along the tube: both are seen and touched. */
    private Spot clear(Place place, Spot at) {
        PlaceKind under = place.kind() == PlaceKind.LINK ? PlaceKind.FOOT : place.kind();
        return geometry.keywork().places().stream()
                .filter(other -> other.kind() == under)
                .takeWhile(other -> !other.equals(place))
                .map(geometry::place)
                .filter(other -> other.distance(at) < BESIDE - 2)
                .findFirst()
                .map(other -> other.plus(at.x() < other.x() ? -BESIDE : BESIDE, 0))
                .orElse(at);
    }

    private static Handle slip(Place place, Spot at, double width, double height, double turn) {
        return handle(place, at, Brass.slab(Ink.FACE, at, width, height, 1.6, turn));
    }

    private Handle guard(Place place, Spot at) {
        Optional<Cup> cup = geometry.cupOf(place).or(() -> geometry.cupUnder(at));
        double r = cup.map(geometry::radius).orElse(14.0) + 6.5;
        Spot middle = cup.map(geometry::cup).orElse(at);
        Spot hinge = cup.map(geometry.keywork()::keyOf)
                .map(key -> geometry.hinge(key, key.axis().atMm()))
                .orElse(at.plus(0, 40));
        double away = hinge.bearing(middle);
        if (place.kind() == PlaceKind.GUARD) {
            return slip(place, middle.along(away + 0.9, r), 11, 11, 45);
        }
        if (place.kind() == PlaceKind.GUARD_SCREW) {
            Spot screw = middle.along(away - 0.9, r);
            return handle(
                    place,
                    screw,
                    Brass.circle(Ink.FACE, screw, 3.6),
                    Brass.line(Ink.DETAIL, List.of(screw.plus(-2, 0), screw.plus(2, 0))));
        }
        List<Mark> marks = new ArrayList<>(List.of(Brass.circle(Ink.GUARD, middle, r)));
        for (double turn : new double[] {0, 2.1, -2.1}) {
            marks.add(Brass.circle(Ink.GUARD_FOOT, middle.along(away + turn, r + 1), 3.2));
        }
        return new Handle(place, marks, middle.along(away, r + 1));
    }

    /** One line from its post to the cradle, with a hook, beside the hinge on the side of the cup. */
    private Handle spring(Place place, Spot at) {
        double side = geometry.keyOf(place)
                .flatMap(geometry.keywork()::cupOf)
                .map(cup -> Math.signum(geometry.cup(cup).y() - at.y()))
                .orElse(-1.0);
        double off = side == 0 ? -5 : side * 5;
        Spot from = at.plus(-15, off);
        Spot to = at.plus(13, off * 0.8);
        String d = "M" + Text.at(from) + "Q" + Text.at(at.plus(0, off * 1.5)) + " " + Text.at(to) + "l2.6 "
                + Text.n(-off * 0.45);
        return handle(place, at.plus(0, off * 1.3), Brass.path(Ink.HIT, d), Brass.path(Ink.SPRING, d));
    }

    private Handle pearl(Place place, Spot at) {
        Optional<Key> key = geometry.keyOf(place);
        Touch touch = key.map(Key::touch).orElse(null);
        Spot spot = key.isPresent() && touch != null ? geometry.touch(key.get(), touch) : at;
        double r = (touch == null ? 8.6 : geometry.pearlRadius(touch)) - 2.2;
        return handle(place, spot, Brass.circle(Ink.FACE, spot, r));
    }

    /** A roller lies along the edge of its plate. */
    private Handle roller(Place place, Spot at) {
        Optional<Key> key = geometry.keyOf(place);
        Touch touch = key.map(Key::touch).orElse(null);
        Spot plate = key.isPresent() && touch != null ? geometry.touch(key.get(), touch) : at;
        double down = touch != null && touch.kind() == TouchKind.ROLLER ? -6.5 : 11.5;
        Spot edge = plate.plus(0, down);
        return handle(place, edge, Brass.slab(Ink.FACE, edge, 15, 4.2, 2.1, 0));
    }

    private Handle screw(Place place, Spot at) {
        return handle(
                place,
                at,
                Brass.circle(Ink.FACE, at, 3),
                Brass.line(Ink.DETAIL, List.of(at.plus(-2, -1.2), at.plus(2, 1.2))));
    }
}
