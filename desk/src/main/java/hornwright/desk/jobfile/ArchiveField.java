package hornwright.desk.jobfile;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.horn.Keywork;
import hornwright.desk.archivefile.ArchiveFile;
import hornwright.desk.json.BadInput;
import hornwright.desk.json.Fields;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** What is known of horns like this one: the demo archive by its name, or one written out. */
final class ArchiveField {
    private static final String DEMO = "tarrant-loe";

    private ArchiveField() {}

    /** As built by place at this serial; empty without an archive or a serial. */
    static Map<String, AsBuiltAt> read(Fields file, @Nullable Keywork keywork, @Nullable Long serial) {
        JsonNode node = file.raw("archive");
        if (node == null) {
            return Map.of();
        }
        Archive archive = archive(file, node);
        if (archive == null || keywork == null) {
            return Map.of();
        }
        if (!archive.maker().equals(keywork.maker())) {
            file.fault(
                    "archive",
                    "this archive is of horns by " + archive.maker() + ", the keywork is by " + keywork.maker(),
                    "an archive of " + keywork.maker());
        }
        if (serial == null) {
            file.fault("archive", "an archive answers for a serial, and there is none", "\"serial\": 41207");
            return Map.of();
        }
        return archive.asBuilt(keywork.voice(), serial);
    }

    private static @Nullable Archive archive(Fields file, JsonNode node) {
        if (node.isString()) {
            if (node.stringValue().equals(DEMO)) {
                return ArchiveFile.demo();
            }
            file.fault(
                    "archive", "there is no archive \"" + node.stringValue() + "\"", "\"archive\": \"" + DEMO + "\"");
            return null;
        }
        try {
            return ArchiveFile.read(node, "/archive");
        } catch (BadInput bad) {
            file.faults().addAll(bad.faults());
            return null;
        }
    }
}
