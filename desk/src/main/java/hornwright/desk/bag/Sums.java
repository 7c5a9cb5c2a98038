package hornwright.desk.bag;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Checksums as manifests write them. */
final class Sums {
    private Sums() {}

    /** @param algorithm "SHA-512" or "SHA-256" */
    static String of(String algorithm, byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance(algorithm).digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has " + algorithm, e);
        }
    }
}
