package hornwright.desk.archivefile;

import hornwright.bench.archive.Bearing;
import hornwright.bench.archive.Hand;
import hornwright.bench.archive.Interest;
import hornwright.bench.archive.Means;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Origin;
import hornwright.bench.horn.Cut;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.Word;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.desk.keyworkfile.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was seen on a horn, in JSON. One entry may speak of several places that looked alike; each becomes an observation of
 * its own, called by the entry and the place.
 */
final class ObservationJson {
    private ObservationJson() {}

    static List<Observation> read(Fields f) {
        String id = f.text("id", "w-41630.feet");
        boolean one = f.oneOf("place", "places").equals("place");
        List<String> places = one ? List.of(f.text("place", "foot.d")) : f.texts("places");
        if (places.isEmpty()) {
            f.fault("places", "this list needs at least one entry", "\"places\": [\"foot.d\"]");
        }
        Observation look = look(f, id);
        return places.stream()
                .map(place -> at(look, one ? id : id + "." + place, place))
                .toList();
    }

    private static Observation look(Fields f, String id) {
        Means means = f.object("means", MeansJson::read);
        return new Observation(
                id,
                f.text("witness", "w-41630"),
                "",
                f.text("material", "natural cork"),
                f.textIfAny("colour", "light brown"),
                f.numberIfAny("thicknessAtLeast_mm", Bound.NOT_NEGATIVE, "1.9"),
                f.textIfAny("adhesive", "shellac"),
                wordIfAny(f, "shape", Form.class),
                wordIfAny(f, "cut", Cut.class),
                means,
                f.choiceOr("hand", Words.of(Hand.class), Hand.UNKNOWN),
                f.choiceOr("bearing", Words.of(Bearing.class), Bearing.DIRECT),
                new Origin(f.text("origin", "horn 41630"), means.kind()),
                f.choiceOr("interest", Words.of(Interest.class), Interest.NEUTRAL),
                f.textIfAny("citation", "bench book 12, page 4"),
                f.textIfAny("file", "sha-256 of the photograph"));
    }

    private static <E extends Enum<E> & Word> @Nullable E wordIfAny(Fields f, String name, Class<E> choice) {
        return f.has(name) ? f.choice(name, Words.of(choice)) : null;
    }

    /** The same look at another place. */
    static Observation at(Observation look, String id, String place) {
        return new Observation(
                id,
                look.witness(),
                place,
                look.material(),
                look.colour(),
                look.thicknessAtLeastMm(),
                look.adhesive(),
                look.shape(),
                look.cut(),
                look.means(),
                look.hand(),
                look.bearing(),
                look.origin(),
                look.interest(),
                look.citation(),
                look.file());
    }

    /** One entry for looks that {@link Alike} found to differ by their place only. */
    static Out write(Alike alike) {
        Observation look = alike.looks().getFirst();
        Out out = Out.object().put("id", alike.id()).put("witness", look.witness());
        if (alike.looks().size() == 1) {
            out.put("place", look.place());
        } else {
            out.putTexts(
                    "places", alike.looks().stream().map(Observation::place).toList());
        }
        out.put("material", look.material());
        ifAny(out, "colour", look.colour());
        Double thickness = look.thicknessAtLeastMm();
        if (thickness != null) {
            out.put("thicknessAtLeast_mm", thickness);
        }
        ifAny(out, "adhesive", look.adhesive());
        ifAny(out, "shape", look.shape());
        ifAny(out, "cut", look.cut());
        out.put("means", MeansJson.write(look.means()))
                .put("hand", look.hand().word())
                .put("bearing", look.bearing().word())
                .put("origin", look.origin().id())
                .put("interest", look.interest().word());
        ifAny(out, "citation", look.citation());
        ifAny(out, "file", look.file());
        return out;
    }

    static void ifAny(Out out, String name, @Nullable String value) {
        if (value != null) {
            out.put(name, value);
        }
    }

    private static void ifAny(Out out, String name, @Nullable Word value) {
        ifAny(out, name, value == null ? null : value.word());
    }
}
