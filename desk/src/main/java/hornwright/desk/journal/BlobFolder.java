package hornwright.desk.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Bytes as files beside the embedded database, {@code blobs/ab/cdef…}. The order is what a power cut cannot break:
 * a temporary file, its bytes to the disk, its name, the folder's entry to the disk; only then the row.
 */
public record BlobFolder(Path folder) implements BlobContent {
    @Override
    public void prepare(String sha256, byte[] bytes) {
        Path file = fileOf(sha256);
        Path shelf = Objects.requireNonNull(file.getParent());
        try {
            if (!Files.isDirectory(shelf)) {
                Files.createDirectories(shelf);
                flushFolder(folder);
            }
            Path part = Files.createTempFile(shelf, "part-", "");
            write(part, bytes);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            flushFolder(shelf);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot keep " + sha256, e);
        }
    }

    @Override
    public void within(Handle transaction, String sha256, byte[] bytes) {}

    @Override
    public Optional<byte[]> read(Database database, String sha256) {
        Path file = fileOf(sha256);
        try {
            return Files.exists(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + sha256, e);
        }
    }

    private Path fileOf(String sha256) {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("not the name of a blob");
        }
        return folder.resolve(sha256.substring(0, 2)).resolve(sha256.substring(2));
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** A folder is opened for reading to flush it; where the system has no such thing, its own order must do. */
    private static void flushFolder(Path folder) throws IOException {
        if (System.getProperty("os.name", "").startsWith("Windows")) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
