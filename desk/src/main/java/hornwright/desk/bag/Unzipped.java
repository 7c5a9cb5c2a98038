package hornwright.desk.bag;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/**
 * The files of a zip in memory, counted while they grow, so that a small file cannot become a large one. Entries are read
 * one after another from their own headers: none can overlap another, and a link is a text like any other. Source of the
 * dangers: OWASP ASVS 5.0.0, 5.2.3 and 5.3.3.
 */
final class Unzipped {
    private static final int MOST_ENTRIES = 10_000;
    private static final long MOST_BYTES = 256L << 20;
    private static final int MOST_RATIO = 100;
    /** Below this nothing can do harm, and a file of blanks packs well. */
    private static final long HARMLESS = 1L << 20;

    private static final int LONGEST_NAME = 300;
    private static final Pattern NAME = Pattern.compile("[^/\\\\:\\p{Cntrl}]+(/[^/\\\\:\\p{Cntrl}]+)*");

    private final byte[] zip;
    private final Map<String, byte[]> files = new TreeMap<>();
    private long total;

    private Unzipped(byte[] zip) {
        this.zip = zip;
    }

    static Map<String, byte[]> of(byte[] zip) {
        if (zip.length < 4 || zip[0] != 'P' || zip[1] != 'K') {
            throw new UnreadableBag("That file is no zip.");
        }
        return new Unzipped(zip).read();
    }

    private Map<String, byte[]> read() {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            ZipEntry entry = in.getNextEntry();
            while (entry != null) {
                if (!entry.isDirectory()) {
                    keep(entry.getName(), inflated(in));
                }
                entry = in.getNextEntry();
            }
        } catch (ZipException | IllegalArgumentException | java.io.EOFException e) {
            throw new UnreadableBag("The zip is damaged or cut short; send it again.");
        } catch (IOException e) {
            throw new UnreadableBag("The zip cannot be read: " + e.getMessage() + ".");
        }
        return files;
    }

    private void keep(String name, byte[] bytes) {
        boolean climbs =
                java.util.Arrays.stream(name.split("/")).anyMatch(part -> part.equals("..") || part.equals("."));
        if (climbs || name.length() > LONGEST_NAME || !NAME.matcher(name).matches()) {
            throw new UnreadableBag("The zip names a file \"%s\", which leads out of its folder or is no name."
                    .formatted(name.length() > 80 ? name.substring(0, 80) + "…" : name.replaceAll("\\p{Cntrl}", "?")));
        }
        if (files.put(name, bytes) != null) {
            throw new UnreadableBag("The zip holds the file \"%s\" twice.".formatted(name));
        }
        if (files.size() > MOST_ENTRIES) {
            throw new UnreadableBag("The zip holds more than 10,000 files.");
        }
    }

    private byte[] inflated(InputStream in) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] piece = new byte[16_384];
        int read = in.read(piece);
        while (read > 0) {
            total += read;
            if (total > MOST_BYTES || (total > HARMLESS && total > (long) zip.length * MOST_RATIO)) {
                throw new UnreadableBag(
                        "The zip grows far beyond its size when it is opened; it is not opened further.");
            }
            out.write(piece, 0, read);
            read = in.read(piece);
        }
        return out.toByteArray();
    }
}
