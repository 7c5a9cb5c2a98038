package hornwright.bench.horn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Places must belong to something, lie on the tube, and agree with the cup, spring or contact they stand for. */
final class PlaceCheck {
    private static final double SAME = 1e-6;

    private final Keywork keywork;
    private final Flaws flaws;

    private PlaceCheck(Keywork keywork, Flaws flaws) {
        this.keywork = keywork;
        this.flaws = flaws;
    }

    static void look(Keywork keywork, Flaws flaws) {
        PlaceCheck check = new PlaceCheck(keywork, flaws);
        for (int i = 0; i < keywork.places().size(); i++) {
            check.place(keywork.places().list().get(i), "/places/" + i);
        }
        check.padPlaces();
        check.springPlaces();
        check.contactPlaces();
    }

    private void place(Place place, String at) {
        switch (place.belongsTo()) {
            case Owner.OfCup cup -> flaws.unlessKnown(keywork.cups(), cup.id(), "cup", at + "/belongsTo/cup");
            case Owner.OfKey key -> flaws.unlessKnown(keywork.keys(), key.id(), "key", at + "/belongsTo/key");
            case Owner.OfLink link -> flaws.unlessKnown(keywork.links(), link.id(), "link", at + "/belongsTo/link");
            case Owner.OfRod rod -> flaws.unlessKnown(keywork.rods(), rod.id(), "rod", at + "/belongsTo/rod");
            case Owner.OfHole hole -> flaws.unlessKnown(keywork.holes(), hole.id(), "hole", at + "/belongsTo/hole");
            case Owner.OfPart part -> {
                if (keywork.tube().parts().stream().noneMatch(p -> p.part() == part.part())) {
                    flaws.add(at + "/belongsTo/part", "this tube has no " + part.id(), "\"body\"");
                }
            }
        }
        if (place.beneath() != null) {
            flaws.unlessKnown(keywork.places(), place.beneath(), "place", at + "/beneath");
        }
        if (!place.id().equals(place.kind().word())
                && !place.id().startsWith(place.kind().word() + ".")) {
            flaws.add(
                    at + "/id",
                    "the id does not begin with its kind",
                    "\"" + place.kind().word() + ".a\"");
        }
        if (place.at().atMm() > keywork.tube().lengthMm()) {
            flaws.add(
                    at + "/at_mm",
                    "this lies beyond the bell rim",
                    "at most " + keywork.tube().lengthMm());
        }
    }

    /** Every cup has one pad and one adhesive of its own, and they say what the cup says. */
    private void padPlaces() {
        for (int i = 0; i < keywork.cups().size(); i++) {
            Cup cup = keywork.cups().list().get(i);
            List<Place> own = keywork.placesOf(cup);
            String at = "/cups/" + i;
            agree(own, PlaceKind.PAD, cup.pad().material(), cup.pad().thicknessMm(), at + "/pad");
            agree(
                    own,
                    PlaceKind.ADHESIVE,
                    cup.adhesive().material(),
                    cup.adhesive().thicknessMm(),
                    at + "/adhesive");
            agree(
                    own,
                    centre(cup.centre().kind()),
                    cup.centre().material(),
                    cup.centre().thicknessMm(),
                    at + "/centre");
        }
    }

    private static PlaceKind centre(PadCentreKind kind) {
        return switch (kind) {
            case RESONATOR -> PlaceKind.RESONATOR;
            case RIVET -> PlaceKind.RIVET;
            case STITCHED, BARE -> PlaceKind.PAD_CENTRE;
        };
    }

    private void agree(List<Place> own, PlaceKind kind, String material, double thicknessMm, String at) {
        List<Place> of = own.stream()
                .filter(place -> place.kind() == kind && place.beneath() == null)
                .toList();
        if (of.size() != 1) {
            flaws.add(
                    at,
                    "this cup needs exactly one place of the kind " + kind.word() + ", it has " + of.size(),
                    "a place \"" + kind.word() + ".…\" that belongs to this cup");
        } else {
            agree(of.getFirst(), material, thicknessMm, at);
        }
    }

    private void agree(Place place, String material, double thicknessMm, String at) {
        AsBuilt built = place.asBuilt();
        if (!built.material().equals(material) || Math.abs(built.thicknessMm() - thicknessMm) > SAME) {
            flaws.add(
                    at,
                    "here stands " + material + " " + thicknessMm + " mm, at the place " + place.id() + " "
                            + built.material() + " " + built.thicknessMm() + " mm",
                    "the same at both");
        }
    }

    private void springPlaces() {
        for (int i = 0; i < keywork.keys().size(); i++) {
            Key key = keywork.keys().list().get(i);
            String at = "/keys/" + i + "/spring/place";
            keywork.places().find(key.spring().place()).ifPresent(place -> {
                if (place.kind() != PlaceKind.SPRING || !place.belongsTo().equals(new Owner.OfKey(key.id()))) {
                    flaws.add(at, place.id() + " is not a spring of this key", "\"spring." + key.id() + "\"");
                }
                agree(place, key.spring().material(), key.spring().thicknessMm(), at);
            });
        }
    }

    /** A layer lies in one contact only, and the layer and its place belong to the same key or link. */
    private void contactPlaces() {
        Map<String, String> used = new HashMap<>();
        for (int i = 0; i < keywork.keys().size(); i++) {
            Key key = keywork.keys().list().get(i);
            List<Layer> layers = new ArrayList<>(key.stop().layers());
            Stop closing = key.closingStop();
            if (closing != null) {
                layers.addAll(closing.layers());
            }
            layers(layers, new Owner.OfKey(key.id()), "/keys/" + i, used);
        }
        for (int i = 0; i < keywork.links().size(); i++) {
            Link link = keywork.links().list().get(i);
            layers(link.layers(), new Owner.OfLink(link.id()), "/links/" + i + "/layers", used);
        }
    }

    private void layers(List<Layer> layers, Owner owner, String at, Map<String, String> used) {
        for (Layer layer : layers) {
            String other = used.put(layer.place(), owner.id());
            if (other != null) {
                flaws.add(
                        at,
                        "the place " + layer.place() + " already lies in a contact of " + other,
                        "a place of its own");
            }
            keywork.places().find(layer.place()).ifPresent(place -> {
                if (!place.belongsTo().equals(owner)) {
                    flaws.add(
                            at, place.id() + " belongs to " + place.belongsTo().id(), "a place of " + owner.id());
                }
                agree(place, layer.material(), layer.thicknessMm(), at);
            });
        }
    }
}
