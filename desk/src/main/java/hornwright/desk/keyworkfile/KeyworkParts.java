package hornwright.desk.keyworkfile;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Identified;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Switches;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Tube;
import hornwright.bench.horn.Voice;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import java.util.List;
import java.util.function.Function;

/** The parts of a keywork file as read, before anybody knows whether they fit together. */
record KeyworkParts(
        String id,
        String maker,
        String name,
        Voice voice,
        Switches switches,
        Tube tube,
        List<ToneHole> holes,
        List<Cup> cups,
        List<Key> keys,
        List<Link> links,
        List<Rod> rods,
        List<Place> places,
        Use use,
        List<Fingering> fingerings) {
    static final String FORMAT = "hornwright-keywork";
    static final int VERSION = 1;

    static KeyworkParts read(Fields file) {
        heading(file);
        List<Place> places = named(file, "places", PlaceJson::read);
        Layers layers = new Layers(places);
        return new KeyworkParts(
                file.text("id", "tarrant-loe-alto"),
                file.text("maker", "Tarrant & Loe"),
                file.text("name", "alto"),
                file.choice("voice", Words.of(Voice.class)),
                file.object("switches", SwitchesJson::read),
                file.object("tube", TubeJson::read),
                named(file, "holes", HoleJson::read),
                named(file, "cups", CupJson::read),
                named(file, "keys", fields -> KeyJson.read(fields, layers)),
                named(file, "links", fields -> LinkJson.read(fields, layers)),
                named(file, "rods", RodJson::read),
                places,
                Use.read(file),
                named(file, "fingerings", FingeringJson::read));
    }

    private static void heading(Fields file) {
        if (!file.text("format", FORMAT).equals(FORMAT)) {
            file.fault("format", "this is not a keywork file", "\"format\": \"" + FORMAT + "\"");
        }
        if (file.whole("version", Bound.COUNT, "1") > VERSION) {
            file.fault("version", "this file is from a newer program", "\"version\": " + VERSION);
        }
        file.textIfAny("note", "demo");
    }

    private static <T extends Identified> List<T> named(Fields file, String list, Function<Fields, T> reader) {
        List<T> all = file.someOf(list, reader);
        file.uniqueIds(list, all.stream().map(Identified::id).toList());
        return all;
    }

    Keywork assemble() {
        return new Keywork(
                id,
                maker,
                name,
                voice,
                switches,
                tube,
                ById.of(holes),
                ById.of(cups),
                ById.of(keys),
                ById.of(links),
                ById.of(rods),
                ById.of(places),
                use.sets(),
                use.holds(),
                use.linkedSets(),
                use.octaveStates(),
                use.lowTable(),
                ById.of(fingerings));
    }
}
