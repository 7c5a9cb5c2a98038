package hornwright.desk.journal;

import java.time.Instant;
import java.util.HexFormat;

/** A photo or a sound, named by the SHA-256 of its bytes. */
public record Blob(String sha256, long size, String media, Instant at) {
    /** The SHA-256 of the bytes in lower-case hexadecimal. */
    public static String nameOf(byte[] content) {
        return HexFormat.of().formatHex(Chain.sha256().digest(content));
    }
}
