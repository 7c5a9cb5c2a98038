package hornwright.desk.use;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Short ids made from a form's key, so that a form sent twice makes the same one and two benches never the same. */
final class FreshId {
    private static final int LETTERS = 9;

    private FreshId() {}

    /** Such as {@code r.k3f9q2x0a}; 46 bits of the key's SHA-256. */
    static String of(String prefix, Form form) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(form.key().getBytes(StandardCharsets.UTF_8));
            String letters = new BigInteger(1, hash).toString(36);
            return prefix + "." + letters.substring(letters.length() - LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
