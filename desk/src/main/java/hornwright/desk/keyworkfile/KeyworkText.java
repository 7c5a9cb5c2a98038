package hornwright.desk.keyworkfile;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Identified;
import hornwright.bench.horn.Keywork;
import hornwright.desk.json.Out;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes a keywork one entry a line, so that two files can be compared line by line. */
final class KeyworkText {
    private final List<String> members = new ArrayList<>();

    private KeyworkText() {}

    static String of(Keywork keywork) {
        KeyworkText text = new KeyworkText();
        text.heading(keywork);
        text.parts(keywork);
        return "{\n" + String.join(",\n", text.members) + "\n}\n";
    }

    private void heading(Keywork k) {
        Out head = Out.object()
                .put("format", KeyworkParts.FORMAT)
                .put("version", KeyworkParts.VERSION)
                .put("id", k.id())
                .put("maker", k.maker())
                .put("name", k.name())
                .put("voice", k.voice().word())
                .put("switches", SwitchesJson.write(k.switches()))
                .put("tube", TubeJson.write(k.tube()));
        head.node().properties().forEach(field -> members.add(" \"" + field.getKey() + "\": " + field.getValue()));
    }

    private void parts(Keywork k) {
        named("holes", k.holes(), HoleJson::write);
        named("cups", k.cups(), CupJson::write);
        named("keys", k.keys(), KeyJson::write);
        named("links", k.links(), LinkJson::write);
        named("rods", k.rods(), RodJson::write);
        named("places", k.places(), PlaceJson::write);
        list("sets", k.sets(), UseText::write);
        list("holds", k.holds(), UseText::write);
        list("linkedSets", k.linkedSets(), UseText::write);
        list("octaveStates", k.octaveStates(), UseText::write);
        members.add(" \"lowTable\": " + UseText.write(k.lowTable()));
        named("fingerings", k.fingerings(), FingeringJson::write);
    }

    private <T extends Identified> void named(String name, ById<T> all, Function<T, Out> writer) {
        list(name, all.list(), writer);
    }

    private <T> void list(String name, List<T> all, Function<T, Out> writer) {
        String lines = all.stream().map(one -> "  " + writer.apply(one)).collect(Collectors.joining(",\n", "\n", "\n"));
        members.add(" \"" + name + "\": [" + (all.isEmpty() ? "" : lines) + " ]");
    }
}
