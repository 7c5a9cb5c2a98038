package hornwright.desk.journal;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Objects;
import org.jdbi.v3.core.Handle;
import tools.jackson.databind.json.JsonMapper;

/**
 * A copy of everything one shop keeps, as lines of JSON and plain files, the same from either database. It is one picture
 * taken in one transaction, may be made while the program works, and gets its name only when it is whole.
 */
public final class Backup {
    static final String JOURNAL = "journal.jsonl";
    static final String PEOPLE = "people.jsonl";
    static final String FILES = "files.jsonl";
    static final String FILE_FOLDER = "files";

    private static final JsonMapper JSON = EditJson.mapper();
    private static final String READ_ME = """
            A backup of one shop.

            journal.jsonl        every edit, one a line, in the order it was made; each carries the SHA-256 of itself and of
                                 the one before, so that nothing can be changed or taken out unnoticed
            people.jsonl         names and addresses, which the edits only point at
            files.jsonl          what lies in the folder files: photographs and sounds, each named by its SHA-256
            manifest-sha256.txt  the SHA-256 of every file here; 'sha256sum -c manifest-sha256.txt' checks them

            'hornwright restore' brings it back into an empty folder or database.
            """;

    private final ShopData data;

    public Backup(ShopData data) {
        this.data = data;
    }

    /** What was written. */
    public record Made(Path folder, long edits, long people, long files) {}

    /** Writes the backup to {@code folder}, which must not exist yet. */
    public Made writeTo(Path folder) {
        Path part = folder.resolveSibling(Objects.requireNonNull(folder.getFileName()) + ".part");
        try {
            Files.createDirectories(
                    Objects.requireNonNull(folder.toAbsolutePath().getParent()));
            Files.createDirectory(part);
            Files.createDirectory(part.resolve(FILE_FOLDER));
            Made made = data.database().reader().inTransaction(handle -> write(handle, part, folder));
            Files.writeString(part.resolve("README.txt"), READ_ME);
            Manifest.write(part);
            Files.move(part, folder, StandardCopyOption.ATOMIC_MOVE);
            return made;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write the backup to " + folder, e);
        }
    }

    private Made write(Handle handle, Path part, Path folder) {
        long edits = lines(part.resolve(JOURNAL), out -> Rows.all(handle, entry -> line(out, entry)));
        List<Person> people = People.all(handle);
        lines(part.resolve(PEOPLE), out -> people.forEach(person -> line(out, person)));
        List<Blob> blobs = Blobs.all(handle);
        lines(part.resolve(FILES), out -> blobs.forEach(blob -> line(out, blob)));
        blobs.forEach(blob -> copy(blob, part));
        return new Made(folder, edits, people.size(), blobs.size());
    }

    private void copy(Blob blob, Path part) {
        byte[] bytes = data.blobs()
                .read(blob.sha256())
                .orElseThrow(() -> new Unusable("The file %s is missing; run check".formatted(blob.sha256())));
        try {
            Files.write(part.resolve(FILE_FOLDER).resolve(blob.sha256()), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @FunctionalInterface
    private interface Lines {
        void write(Counting out);
    }

    /** A file of lines that counts them. */
    private static final class Counting {
        private final BufferedWriter out;
        private long count;

        Counting(BufferedWriter out) {
            this.out = out;
        }
    }

    private static long lines(Path file, Lines lines) {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            Counting counting = new Counting(out);
            lines.write(counting);
            return counting.count;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void line(Counting to, Record row) {
        try {
            to.out.write(JSON.writeValueAsString(row));
            to.out.write('\n');
            to.count++;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
