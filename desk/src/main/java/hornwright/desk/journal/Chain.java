package hornwright.desk.journal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * Ties every row to all before it: each hash is SHA-256 over the row's fields and the hash before. A row that is
 * changed, taken out or put in breaks the chain from there on. Each field goes in with its length first, so that no two
 * rows can give the same bytes.
 */
final class Chain {
    /** The hash before the first row. */
    static final String START = "0".repeat(64);

    private Chain() {}

    static String hash(Entry row) {
        MessageDigest digest = sha256();
        List.of(
                        row.prevHash(),
                        Long.toString(row.position()),
                        row.stream().text(),
                        Long.toString(row.seq()),
                        row.at().toString(),
                        row.hand().who(),
                        row.hand().bench(),
                        row.kind(),
                        Integer.toString(row.version()),
                        row.edit(),
                        row.key())
                .forEach(field -> {
                    byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
                    digest.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
                    digest.update(bytes);
                });
        return HexFormat.of().formatHex(digest.digest());
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
