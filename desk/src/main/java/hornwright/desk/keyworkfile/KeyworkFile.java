package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Flaw;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.KeyworkCheck;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import hornwright.desk.json.Fields;
import hornwright.desk.json.StrictJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** Reads and writes keywork files. A file that does not describe a possible horn is refused with every fault in it. */
public final class KeyworkFile {
    /** The keyworks the program ships with, all of fictional makers, as the index beside the files lists them. */
    public static final List<String> SHIPPED = resource("index.txt").lines().toList();

    private KeyworkFile() {}

    /** The keywork in {@code text}, else {@link BadInput} with JSON pointers. */
    public static Keywork read(String text) {
        return read(StrictJson.object(text), "");
    }

    /** The keywork in a tree that stands at {@code pointer} of a larger file. */
    public static Keywork read(JsonNode tree, String pointer) {
        Faults faults = new Faults();
        KeyworkParts parts = Fields.of(tree, pointer, faults).read(KeyworkParts::read);
        faults.refuseIfAny();
        Keywork keywork = parts.assemble();
        for (Flaw flaw : KeyworkCheck.flaws(keywork)) {
            faults.add(pointer + flaw.pointer(), flaw.what(), flaw.example());
        }
        faults.refuseIfAny();
        return keywork;
    }

    /** A keywork the program ships with, by its file name without ending; empty if there is none of that name. */
    public static Optional<Keywork> shipped(String name) {
        return SHIPPED.contains(name) ? Optional.of(read(text(name))) : Optional.empty();
    }

    static String text(String name) {
        return resource(name + ".json");
    }

    private static String resource(String name) {
        String file = "/hornwright/keywork/" + name;
        try (InputStream in = KeyworkFile.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException(file + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The file for a keywork; reading it back gives an equal keywork. */
    public static String write(Keywork keywork) {
        return KeyworkText.of(keywork);
    }
}
