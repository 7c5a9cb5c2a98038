package hornwright.desk.keyworkfile;

import hornwright.bench.horn.AsBuilt;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Face;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Side;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The layers of contacts. Material and thickness are written once, at the place, and taken from there. */
final class Layers {
    private final Map<String, AsBuilt> built = new HashMap<>();

    Layers(List<Place> places) {
        places.forEach(place -> built.put(place.id(), place.asBuilt()));
    }

    List<Layer> read(Fields contact) {
        return contact.list("layers", this::layer);
    }

    private Layer layer(Fields f) {
        String place = f.text("place", "foot.a");
        AsBuilt made = built.get(place);
        if (made == null) {
            f.fault(
                    "place",
                    "no place is called \"" + place + "\"",
                    "\"place\": \"foot.a\", with foot.a among the places");
            made = new AsBuilt("", "", 0, "");
        }
        return new Layer(
                place,
                made.material(),
                made.thicknessMm(),
                f.choice("on", Words.of(Face.class)),
                f.choiceOr("side", Words.of(Side.class), Side.INNER),
                f.choiceOr("form", Words.of(Form.class), Form.STRIP),
                f.choiceOr("cut", Words.of(Cut.class), Cut.KNIFED));
    }

    static List<Out> write(List<Layer> layers) {
        return layers.stream()
                .map(layer -> Out.object()
                        .put("place", layer.place())
                        .put("on", layer.face().word())
                        .put("side", layer.side().word())
                        .put("form", layer.form().word())
                        .put("cut", layer.cut().word()))
                .toList();
    }
}
