package hornwright.desk.use;

import hornwright.desk.journal.Blob;
import java.util.Optional;

/** Keeps photographs and sounds, and gives them back by the name their bytes give them. */
public record KeepFile(Shop shop) {
    public Blob keep(byte[] bytes, String media) {
        return shop.data().blobs().put(bytes, media);
    }

    /** The name these bytes would be kept under. */
    public static String nameOf(byte[] bytes) {
        return Blob.nameOf(bytes);
    }

    public Optional<Blob> find(String sha256) {
        return shop.data().blobs().find(sha256);
    }

    public Optional<byte[]> read(String sha256) {
        return shop.data().blobs().read(sha256);
    }
}
