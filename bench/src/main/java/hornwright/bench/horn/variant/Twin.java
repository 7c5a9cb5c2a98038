package hornwright.bench.horn.variant;

import hornwright.bench.horn.Axis;
import hornwright.bench.horn.HingeTube;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TradeName;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A key made like another of the same horn, with places of its own: same materials and sizes, other ids, names and spot.
 *
 * @param like the key it is made like
 * @param alongMm how far along the tube it lies from that key
 * @param roundDeg how far round the tube
 */
record Twin(String id, TradeName name, Key like, double alongMm, double roundDeg) {
    /** "foot.high-e" becomes "foot.high-f-sharp", "post.high-e.1" becomes "post.high-f-sharp.1". */
    String id(String of) {
        return of.replaceFirst("(?<=^|\\.)" + Pattern.quote(like.id()) + "(?=$|\\.)", id);
    }

    Position at(Position of) {
        return Shape.shifted(of, alongMm, roundDeg);
    }

    /** @param openRad how far it stands open at most, at rest or pressed */
    Key key(String rod, double openRad, @Nullable Touch touch, HingeTube tube) {
        Position axis = at(new Position(like.axis().atMm(), like.axis().angleDeg()));
        Axis hinge = new Axis(
                axis.atMm(),
                axis.angleDeg(),
                like.axis().heightAboveBodyMm(),
                like.axis().direction());
        Stop closing = like.closingStop();
        Stop opening = like.stop();
        double clearance = Copies.round(opening.thicknessMm() + opening.armMm() * Math.max(0, openRad), 4);
        boolean open = like.rest() == Rest.OPEN;
        return new Key(
                id,
                name,
                like.group(),
                like.rest(),
                rod,
                hinge,
                stop(opening, clearance),
                closing == null ? null : stop(closing, closing.clearanceMm()),
                touch,
                Copies.at(like.spring(), id(like.spring().place())),
                open ? openRad : 0,
                open ? 0 : openRad,
                tube);
    }

    private Stop stop(Stop of, double clearanceMm) {
        return Copies.stop(of, id(of.id()), of.armMm(), clearanceMm, at(of.at()), layers(of.layers()));
    }

    private List<Layer> layers(List<Layer> layers) {
        return layers.stream()
                .map(l ->
                        new Layer(id(l.place()), l.material(), l.thicknessMm(), l.face(), l.side(), l.form(), l.cut()))
                .toList();
    }

    /** The places of the other key that belong to {@code from}, as this key's own. */
    List<Place> places(Draft draft, Owner from, Owner to) {
        return draft.base.placesOf(from).stream().map(place -> place(place, to)).toList();
    }

    private Place place(Place of, Owner owner) {
        String beneath = of.beneath();
        return new Place(
                id(of.id()),
                of.kind(),
                TradeName.of(of.name().plain().replace(like.name().plain(), name.plain())),
                of.part(),
                at(of.at()),
                owner,
                beneath == null ? null : id(beneath),
                of.asBuilt(),
                of.diameterMm(),
                of.lengthMm());
    }
}
