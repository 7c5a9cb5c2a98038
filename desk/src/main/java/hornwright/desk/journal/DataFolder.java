package hornwright.desk.journal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * The folder that holds everything of one shop, and the promise that only one program uses it. The lock is the
 * operating system's, so it goes with the process however that ends; the address lies in a file of its own beside it.
 */
public final class DataFolder implements AutoCloseable {
    static final String DATABASE = "shop.db";
    static final String BLOBS = "blobs";

    private final Path folder;
    private final FileChannel channel;

    private DataFolder(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    /** Takes the folder, making it when it is missing; refuses when another program holds it. */
    public static DataFolder take(Path folder) {
        try {
            Files.createDirectories(folder);
            FileChannel channel = FileChannel.open(
                    folder.resolve("program.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (lock(channel) == null) {
                channel.close();
                throw Unusable.now("%s is in use by the program at %s".formatted(folder, addressIn(folder)), null);
            }
            Files.deleteIfExists(addressFile(folder));
            return new DataFolder(folder, channel);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot use " + folder, e);
        }
    }

    /** Whether a shop's database lies there. */
    public static boolean holdsShop(Path folder) {
        return Files.isRegularFile(folder.resolve(DATABASE));
    }

    /** Tells a second program where this one can be reached. */
    public void tellAddress(String address) {
        try {
            Files.writeString(addressFile(folder), address);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Path path() {
        return folder;
    }

    public Path database() {
        return folder.resolve(DATABASE);
    }

    public Path blobs() {
        return folder.resolve(BLOBS);
    }

    @Override
    public void close() {
        try {
            Files.deleteIfExists(addressFile(folder));
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // held by this very process
        }
    }

    private static String addressIn(Path folder) throws IOException {
        Path file = addressFile(folder);
        return Files.exists(file) ? Files.readString(file).strip() : "an address it has not told yet";
    }

    private static Path addressFile(Path folder) {
        return folder.resolve("program.address");
    }
}
