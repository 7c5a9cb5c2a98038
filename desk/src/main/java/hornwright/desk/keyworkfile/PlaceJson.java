package hornwright.desk.keyworkfile;

import hornwright.bench.horn.AsBuilt;
import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A place in JSON. Its kind is the first word of its id. */
final class PlaceJson {
    private PlaceJson() {}

    static Place read(Fields f) {
        String id = Names.id(f, "foot.a");
        return new Place(
                id,
                kind(f, id),
                Names.name(f, "A foot"),
                f.choice("part", Words.of(HornPart.class)),
                Names.position(f),
                f.object("belongsTo", PlaceJson::owner),
                f.textIfAny("beneath", "foot.a"),
                f.object("asBuilt", PlaceJson::asBuilt),
                f.numberOr("diameter_mm", 0, Bound.NOT_NEGATIVE, "15"),
                f.numberOr("length_mm", 0, Bound.NOT_NEGATIVE, "38"));
    }

    private static PlaceKind kind(Fields f, String id) {
        int dot = id.indexOf('.');
        String word = dot < 0 ? id : id.substring(0, dot);
        PlaceKind kind = Words.of(PlaceKind.class).get(word);
        if (kind == null) {
            f.fault(
                    "id",
                    "\"" + word + "\" is no kind of place",
                    "one of " + String.join(", ", Words.of(PlaceKind.class).keySet()) + ", as in \"foot.a\"");
            return PlaceKind.PAD;
        }
        return kind;
    }

    private static Owner owner(Fields f) {
        return switch (f.oneOf("cup", "key", "link", "rod", "hole", "part")) {
            case "key" -> new Owner.OfKey(f.text("key", "a"));
            case "link" -> new Owner.OfLink(f.text("link", "link.a-to-bis"));
            case "rod" -> new Owner.OfRod(f.text("rod", "rod.upper-stack"));
            case "hole" -> new Owner.OfHole(f.text("hole", "a"));
            case "part" -> new Owner.OfPart(f.choice("part", Words.of(HornPart.class)));
            default -> new Owner.OfCup(f.text("cup", "cup.a"));
        };
    }

    private static AsBuilt asBuilt(Fields f) {
        return new AsBuilt(
                f.text("material", "natural cork"),
                f.textOr("colour", "not known", "light brown"),
                f.numberOr("thickness_mm", 0, Bound.NOT_NEGATIVE, "1.6"),
                f.textOr("finish", "not known", "knife cut"));
    }

    static Out write(Place place) {
        Out out = Names.put(Out.object().put("id", place.id()), place.name())
                .put("part", place.part().word());
        Names.put(out, place.at()).put("belongsTo", write(place.belongsTo()));
        if (place.beneath() != null) {
            out.put("beneath", place.beneath());
        }
        out.put("asBuilt", write(place.asBuilt()));
        if (place.diameterMm() > 0) {
            out.put("diameter_mm", place.diameterMm());
        }
        return place.lengthMm() > 0 ? out.put("length_mm", place.lengthMm()) : out;
    }

    private static Out write(AsBuilt built) {
        return Out.object()
                .put("material", built.material())
                .put("colour", built.colour())
                .put("thickness_mm", built.thicknessMm())
                .put("finish", built.finish());
    }

    private static Out write(Owner owner) {
        String word = switch (owner) {
            case Owner.OfCup cup -> "cup";
            case Owner.OfKey key -> "key";
            case Owner.OfLink link -> "link";
            case Owner.OfRod rod -> "rod";
            case Owner.OfHole hole -> "hole";
            case Owner.OfPart part -> "part";
        };
        return Out.object().put(word, owner.id());
    }
}
