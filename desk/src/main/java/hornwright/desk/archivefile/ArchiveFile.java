package hornwright.desk.archivefile;

import hornwright.bench.archive.Archive;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Faults;
import hornwright.desk.json.Fields;
import hornwright.desk.json.StrictJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import tools.jackson.databind.JsonNode;

/** Reads and writes archive files. A file that contradicts itself is refused with every fault in it. */
public final class ArchiveFile {
    private static final String DEMO = "/hornwright/archive/tarrant-loe.json";

    private ArchiveFile() {}

    /** The archive in {@code text}, else {@link BadInput} with JSON pointers. */
    public static Archive read(String text) {
        return read(StrictJson.object(text), "");
    }

    /** The archive in a tree that stands at {@code pointer} of a larger file. */
    public static Archive read(JsonNode tree, String pointer) {
        Faults faults = new Faults();
        ArchiveParts parts = Fields.of(tree, pointer, faults).read(ArchiveParts::read);
        faults.refuseIfAny();
        parts.check(pointer, faults);
        faults.refuseIfAny();
        return parts.assemble();
    }

    /** What the program ships with: horns of a fictional maker, looked at by nobody. */
    public static Archive demo() {
        return read(demoText());
    }

    static String demoText() {
        try (InputStream in = ArchiveFile.class.getResourceAsStream(DEMO)) {
            if (in == null) {
                throw new IllegalStateException(DEMO + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The file for an archive; reading it back gives an equal archive. */
    public static String write(Archive archive) {
        return ArchiveText.of(archive);
    }
}
