package hornwright.desk.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/** Brings a backup back into an empty shop, of either database. All of it is checked before anything is written. */
public final class Restore {
    private final Path folder;
    private final List<Entry> entries;
    private final List<Person> people;
    private final List<Blob> blobs;

    private Restore(Path folder, List<Entry> entries, List<Person> people, List<Blob> blobs) {
        this.folder = folder;
        this.entries = entries;
        this.people = people;
        this.blobs = blobs;
    }

    /** The backup in this folder; {@link Unusable} names everything that is wrong with it. */
    public static Restore from(Path folder) {
        try {
            refuse(folder, Manifest.faults(folder));
            Restore restore = new Restore(
                    folder,
                    lines(folder.resolve(Backup.JOURNAL), Entry.class),
                    lines(folder.resolve(Backup.PEOPLE), Person.class),
                    lines(folder.resolve(Backup.FILES), Blob.class));
            refuse(folder, restore.faults());
            return restore;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the backup in " + folder, e);
        }
    }

    /** Writes everything to {@code data}, which must be empty, in one transaction. */
    public Backup.Made into(ShopData data) {
        blobs.forEach(blob -> data.blobs().prepare(blob.sha256(), bytes(blob)));
        data.database().writer().useTransaction(transaction -> {
            data.database().claim(transaction);
            if (Rows.last(transaction).position() != 0) {
                throw new Unusable("There is a shop in this place already; a backup is restored into an empty one");
            }
            Rows.insert(transaction, entries);
            people.forEach(person -> People.put(transaction, person));
            blobs.forEach(blob -> data.blobs().insert(transaction, blob, bytes(blob)));
        });
        return new Backup.Made(folder, entries.size(), people.size(), blobs.size());
    }

    private List<String> faults() {
        ChainCheck check = new ChainCheck();
        entries.forEach(check::next);
        List<String> faults = new ArrayList<>(check.faults());
        for (Blob blob : blobs) {
            if (!Files.exists(file(blob))) {
                faults.add("The file %s is missing.".formatted(blob.sha256()));
            } else if (!Blob.nameOf(bytes(blob)).equals(blob.sha256())) {
                faults.add("The file %s is not the one it is named by.".formatted(blob.sha256()));
            }
        }
        return faults;
    }

    private byte[] bytes(Blob blob) {
        try {
            return Files.readAllBytes(file(blob));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path file(Blob blob) {
        return folder.resolve(Backup.FILE_FOLDER).resolve(blob.sha256());
    }

    private static <T> List<T> lines(Path file, Class<T> type) throws IOException {
        List<T> all = new ArrayList<>();
        for (String line : Files.readAllLines(file)) {
            all.add(one(file, line, type));
        }
        return all;
    }

    private static <T> T one(Path file, String line, Class<T> type) {
        try {
            T row = EditJson.mapper().readValue(line, type);
            @Nullable String missing = Whole.missing(row);
            if (missing != null) {
                throw new Unusable("A line of %s has no %s".formatted(file.getFileName(), missing));
            }
            return row;
        } catch (JacksonException e) {
            throw new Unusable(
                    "A line of %s cannot be read: %s".formatted(file.getFileName(), e.getOriginalMessage()), e);
        }
    }

    private static void refuse(Path folder, List<String> faults) {
        if (!faults.isEmpty()) {
            throw new Unusable("The backup in %s is damaged:\n%s".formatted(folder, String.join("\n", faults)));
        }
    }
}
