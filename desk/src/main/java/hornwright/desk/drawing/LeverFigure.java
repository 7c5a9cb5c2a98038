package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.StopKind;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The shapes of a key seen from the side, at true scale. */
final class LeverFigure {
    /** Metal of a cup and of an arm, for the eye only: common practice. */
    private static final double CUP_METAL_MM = 0.6;

    private final Keywork keywork;
    private final Key key;
    private final LeverFrame frame;
    private final double unitsPerMm;
    private final List<Mark> marks = new ArrayList<>();

    LeverFigure(Keywork keywork, Key key, LeverFrame frame, double unitsPerMm) {
        this.keywork = keywork;
        this.key = key;
        this.frame = frame;
        this.unitsPerMm = unitsPerMm;
    }

    List<Mark> draw() {
        keywork.cupOf(key).ifPresent(this::ghost);
        body();
        keywork.cupOf(key).ifPresent(this::cup);
        touch();
        key.stops().forEach(this::stop);
        keywork.linksFrom(key).forEach(link -> contact(link, link.driverArmMm()));
        keywork.linksTo(key).forEach(link -> contact(link, link.followerArmMm()));
        hinge();
        return marks;
    }

    Spot units(Spot mm) {
        return new Spot(mm.x() * unitsPerMm, mm.y() * unitsPerMm);
    }

    double openRad() {
        return Math.max(key.restRotationRad(), key.pressedRotationRad());
    }

    /** The wall of the tube, open at the hole, with the chimney and its rim. */
    private void body() {
        double reach = keywork.cupOf(key).map(Cup::insideDiameterMm).orElse(14.0) * 0.75;
        double left = -key.stops().stream()
                        .mapToDouble(Stop::armMm)
                        .filter(arm -> arm < 30)
                        .max()
                        .orElse(10)
                - 10;
        Spot from = frame.tail(-left, 0);
        double r = frame.radius() * unitsPerMm;
        Optional<ToneHole> hole = keywork.cupOf(key).map(keywork::holeOf);
        if (hole.isEmpty()) {
            arc(from, frame.front(-left + reach, 0), r);
            return;
        }
        double half = hole.get().radiusMm() + hole.get().rimWallMm();
        double sag = frame.radius() - Math.sqrt(Math.max(0, Math.pow(frame.radius(), 2) - half * half));
        Spot near = frame.byHole(-half, -sag);
        Spot far = frame.byHole(half, -sag);
        arc(from, near, r);
        double end = Math.min(frame.radius() * 0.93, half + reach * 0.7);
        double endSag = frame.radius() - Math.sqrt(Math.pow(frame.radius(), 2) - end * end);
        arc(far, frame.byHole(end, -endSag), r);
        for (int side : new int[] {-1, 1}) {
            Spot foot = frame.byHole(side * half, -sag);
            Spot rim = frame.byHole(side * half, hole.get().chimneyMm());
            marks.add(Brass.tube(
                    Ink.RIM, units(foot), units(rim), Math.max(2.2, hole.get().rimWallMm() * unitsPerMm)));
        }
    }

    private void arc(Spot from, Spot to, double r) {
        marks.add(Brass.path(
                Ink.BODY,
                "M" + Text.at(units(from)) + "A" + Text.n(r) + " " + Text.n(r) + " 0 0 1 " + Text.at(units(to))));
    }

    private void cup(Cup cup) {
        double rim = keywork.holeOf(cup).chimneyMm();
        double cupRim = rim + cup.parallelGapMm();
        double floor = cupRim + cup.depthMm();
        double wide = cup.insideDiameterMm();
        shell(cup, 0, Ink.RIM);
        place(cup, PlaceKind.ADHESIVE)
                .ifPresent(place -> marks.add(handle(
                        place,
                        slab(
                                floor - cup.adhesive().thicknessMm(),
                                wide,
                                cup.adhesive().thicknessMm()))));
        double top = floor - cup.adhesive().thicknessMm();
        place(cup, PlaceKind.PAD)
                .ifPresent(place -> marks.add(handle(
                        place,
                        slab(
                                top - cup.pad().thicknessMm(),
                                cup.pad().diameterMm(),
                                cup.pad().thicknessMm()))));
        place(cup, PlaceKind.RESONATOR)
                .ifPresent(place -> marks.add(handle(
                        place,
                        slab(
                                rim - cup.seatDepthMm() - cup.centre().thicknessMm(),
                                cup.centre().diameterMm(),
                                Math.max(0.5, cup.centre().thicknessMm())))));
    }

    /** The cup and its arm turned open, as a thin line. */
    private void ghost(Cup cup) {
        double floor = keywork.holeOf(cup).chimneyMm() + cup.parallelGapMm() + cup.depthMm();
        Spot crown = frame.opened(frame.aboveHole(floor + CUP_METAL_MM + 0.8), openRad());
        marks.add(Brass.line(Ink.GHOST, List.of(units(frame.hinge()), units(crown))));
        shell(cup, openRad(), Ink.GHOST);
    }

    private void shell(Cup cup, double rotation, Ink ink) {
        double rim = keywork.holeOf(cup).chimneyMm() + cup.parallelGapMm();
        double half = cup.insideDiameterMm() / 2 + CUP_METAL_MM;
        double top = rim + cup.depthMm() + CUP_METAL_MM;
        List<Spot> corners = List.of(
                frame.byHole(-half, rim),
                frame.byHole(-half, top - 1),
                frame.byHole(-half + 1.2, top),
                frame.byHole(half - 1.2, top),
                frame.byHole(half, top - 1),
                frame.byHole(half, rim));
        StringBuilder d = new StringBuilder("M");
        for (int i = 0; i < corners.size(); i++) {
            d.append(i == 0 ? "" : "L").append(Text.at(units(frame.opened(corners.get(i), rotation))));
        }
        marks.add(Brass.path(ink, d + "Z"));
        if (ink == Ink.RIM) {
            Spot crown = units(frame.aboveHole(top + 0.6));
            marks.add(Brass.arm(units(frame.hinge()), crown, 16, 9, -12));
        }
    }

    /** A layer of the pad stack, from a height upwards. */
    private Mark slab(double from, double width, double thickness) {
        Spot middle = units(frame.aboveHole(from + thickness / 2));
        return Brass.slab(Ink.FACE, middle, width * unitsPerMm, Math.max(1.2, thickness * unitsPerMm), 1.5, 0);
    }

    private Mark.Handle handle(Place place, Mark mark) {
        Spot token = mark instanceof Mark.Shape(Ink ink, Outline.Slab slab) ? slab.centre() : new Spot(0, 0);
        return new Mark.Handle(place, List.of(mark), token);
    }

    private Optional<Place> place(Cup cup, PlaceKind kind) {
        return keywork.placesOf(cup).stream()
                .filter(place -> place.kind() == kind)
                .findFirst();
    }

    private void touch() {
        Touch touch = key.touch();
        if (touch == null) {
            return;
        }
        Spot at = units(touchSpot(touch));
        marks.add(Brass.arm(units(frame.hinge()), at, 12, 8, touch.closes() ? -10 : 10));
        if (touch.kind() == TouchKind.PEARL) {
            marks.add(Brass.slab(Ink.TOUCH, at, 15 * unitsPerMm, 2.4 * unitsPerMm, 3, tilt(touch)));
        } else {
            marks.add(Brass.slab(Ink.TOUCH, at, 18 * unitsPerMm, 1.8 * unitsPerMm, 3, tilt(touch)));
        }
    }

    /** A touch lies across its arm. */
    private double tilt(Touch touch) {
        Spot spot = touchSpot(touch);
        return touch.closes() && keywork.cupOf(key).isPresent() ? 0 : Math.toDegrees(Math.atan2(spot.x(), -spot.y()));
    }

    /** Where a contact of that arm sits: on the arm of the cup when it works towards shut, else on the tail. */
    Spot contactSpot(double armMm, boolean towardsShut) {
        Spot hinge = frame.hinge();
        double high = key.axis().heightAboveBodyMm();
        if (!towardsShut) {
            return key.stops().stream()
                    .filter(stop -> stop.kind() != StopKind.GUARD)
                    .findFirst()
                    .map(stop -> hinge.along(hinge.bearing(frame.foot(stop)), armMm))
                    .orElseGet(() -> frame.tail(armMm, high));
        }
        Spot end = keywork.cupOf(key)
                .map(cup ->
                        frame.aboveHole(keywork.holeOf(cup).chimneyMm() + cup.parallelGapMm() + cup.depthMm() + 1.6))
                .orElseGet(() -> key.touch() == null ? frame.front(armMm, high) : touchSpot(key.touch()));
        return hinge.along(hinge.bearing(end), armMm);
    }

    private void contact(Link link, double armMm) {
        Spot at = units(contactSpot(armMm, link.kind().sense() > 0));
        Mark slip = Brass.slab(Ink.FACE, at, 10, 10, 1.5, 45);
        keywork.placesOf(link).stream()
                .filter(place -> place.kind() == PlaceKind.LINK || place.kind() == PlaceKind.SLEEVE)
                .findFirst()
                .ifPresentOrElse(place -> marks.add(handle(place, slip)), () -> marks.add(slip));
    }

    Spot touchSpot(Touch touch) {
        double over = keywork.cupOf(key)
                .map(cup -> keywork.holeOf(cup).chimneyMm() + cup.parallelGapMm() + cup.depthMm() + 5)
                .orElse(key.axis().heightAboveBodyMm() + 5);
        return touch.closes() ? frame.front(touch.armMm(), over) : frame.tail(touch.armMm(), over);
    }

    /** A foot above the body with its cork, or the felt of a guard above the cup. */
    private void stop(Stop stop) {
        if (stop.kind() == StopKind.GUARD) {
            guard(stop);
            return;
        }
        Spot foot = frame.foot(stop);
        marks.add(Brass.arm(units(frame.hinge()), units(foot), 12, 9, 6));
        double turn = Math.toDegrees(Math.atan2(foot.x(), -foot.y()));
        double under = 0;
        for (Layer layer : stop.layers()) {
            double thick = layer.thicknessMm();
            double from = under;
            keywork.places().find(layer.place()).ifPresent(place -> {
                Spot middle = foot.along(Math.atan2(-foot.y(), -foot.x()), from + thick / 2);
                marks.add(handle(
                        place, Brass.slab(Ink.FACE, units(middle), 7 * unitsPerMm, thick * unitsPerMm, 1, turn)));
            });
            under += thick;
        }
    }

    private void guard(Stop stop) {
        Optional<Cup> cup = keywork.cupOf(key);
        if (cup.isEmpty()) {
            return;
        }
        double top = keywork.holeOf(cup.get()).chimneyMm()
                + cup.get().parallelGapMm()
                + cup.get().depthMm()
                + CUP_METAL_MM;
        double metal = top + stop.clearanceMm();
        double under = 0;
        for (Layer layer : stop.layers()) {
            double from = metal - under - layer.thicknessMm();
            keywork.places()
                    .find(layer.place())
                    .ifPresent(place -> marks.add(handle(
                            place,
                            Brass.slab(
                                    Ink.FACE,
                                    units(frame.aboveHole(from + layer.thicknessMm() / 2)),
                                    11 * unitsPerMm,
                                    layer.thicknessMm() * unitsPerMm,
                                    2,
                                    0))));
            under += layer.thicknessMm();
        }
        double wide = cup.get().insideDiameterMm() + 8;
        marks.add(Brass.slab(Ink.ARM, units(frame.aboveHole(metal + 0.6)), wide * unitsPerMm, 1.2 * unitsPerMm, 2, 0));
    }

    private void hinge() {
        Spot hinge = units(frame.hinge());
        double outer = Math.max(key.tube().outerMm(), keywork.rodOf(key).diameterMm() + 1) / 2 * unitsPerMm;
        marks.add(Brass.circle(Ink.TUBE, hinge, outer));
        marks.add(Brass.circle(Ink.STEEL, hinge, keywork.rodOf(key).diameterMm() / 2 * unitsPerMm));
    }
}
