package hornwright.desk.web.page;

import io.javalin.config.MultipartConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Files that come with a form. Only the pages named here take any. Source of the limits: OWASP ASVS 5.0.0, 5.2.1. */
public final class Uploads {
    /** One photograph of a good camera. */
    private static final long LARGEST_FILE = 40L << 20;

    /** Forms of this program are a few lines; 64 KiB is plenty (OWASP ASVS 2.4.1 asks for a limit). */
    public static final long LARGEST_FORM = 64L * 1024;

    private static final Limit FORM = new Limit(LARGEST_FORM, "That is too long for one form: at most 64 kilobytes.");

    /** Two minutes of stereo at 96 kHz and 24 bits are 69 MB; a scale takes one. */
    private static final Limit SOUND = new Limit(
            80L << 20, "That is too long for one recording: at most 80 megabytes, which is two minutes and more.");

    private static final Limit PHOTOS =
            new Limit(80L << 20, "That is too much at once: at most 80 megabytes. Send fewer files.");

    private static final Limit TABLE =
            new Limit(8L << 20, "That is too long for one table: at most 8 megabytes. Bring it in by parts.");

    private static final Limit BAG = new Limit(
            64L << 20, "That is too large for one page: at most 64 megabytes. The command receive takes more.");

    private static final Pattern PHOTOS_OF_A_HORN =
            Pattern.compile("/horn/[^/]+/photos|/archive/(witness/[^/]+/looks|statement|fits)");

    private Uploads() {}

    /** How much one request may bring, and what is said of more. */
    public record Limit(long bytes, String sentence) {}

    public static Limit limit(Context context) {
        if (context.path().endsWith("/sound/test")) {
            return SOUND;
        }
        String type = context.header("Content-Type");
        boolean files = type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/form-data");
        if (files && (context.path().equals("/archive/import") || context.path().equals("/archive/years"))) {
            return TABLE;
        }
        if (files && context.path().equals("/archive/receive")) {
            return BAG;
        }
        return files && PHOTOS_OF_A_HORN.matcher(context.path()).matches() ? PHOTOS : FORM;
    }

    /** Held in memory: what is sent lies in no passing file that could be left behind. */
    public static void limit(MultipartConfig config) {
        config.maxFileSize(SOUND.bytes(), SizeUnit.BYTES);
        config.maxTotalRequestSize(SOUND.bytes(), SizeUnit.BYTES);
        config.maxInMemoryFileSize((int) SOUND.bytes(), SizeUnit.BYTES);
    }

    /** The files of that field; a field left empty by a browser brings none. */
    public static List<byte[]> of(Context context, String field) {
        return of(context, field, LARGEST_FILE);
    }

    /** What another shop packed. */
    public static List<byte[]> bags(Context context, String field) {
        return of(context, field, BAG.bytes());
    }

    private static List<byte[]> of(Context context, String field, long largest) {
        List<UploadedFile> files = context.uploadedFiles(field).stream()
                .filter(file -> file.size() > 0)
                .toList();
        if (files.stream().anyMatch(file -> file.size() > largest)) {
            throw new Refusal(413, "One of the files is over %d megabytes; send it smaller.".formatted(largest >> 20));
        }
        return files.stream().map(Uploads::bytes).toList();
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
