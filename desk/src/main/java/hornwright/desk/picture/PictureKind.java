package hornwright.desk.picture;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** What a file is by its first bytes, whatever its name says. */
enum PictureKind {
    JPEG,
    PNG;

    private static final byte[] PNG_START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final List<String> HEIF_BRANDS = List.of("heic", "heix", "hevc", "heim", "heis", "mif1", "msf1");

    static PictureKind of(byte[] file) {
        if (file.length > 3 && (file[0] & 0xff) == 0xff && (file[1] & 0xff) == 0xd8 && (file[2] & 0xff) == 0xff) {
            return JPEG;
        }
        if (startsWith(file, PNG_START)) {
            return PNG;
        }
        throw new UnreadablePicture(told(file) + " Photographs are taken as JPEG or PNG.");
    }

    private static String told(byte[] file) {
        if (text(file, 0, 4).equals("RIFF") && text(file, 8, 4).equals("WEBP")) {
            return "That is a WebP picture; save or send it as JPEG.";
        }
        if (text(file, 4, 4).equals("ftyp")) {
            String brand = text(file, 8, 4);
            return HEIF_BRANDS.contains(brand)
                    ? "That is a HEIC picture; choose \"most compatible\" in the camera's settings, or send it as JPEG."
                    : brand.startsWith("avi") ? "That is an AVIF picture; save or send it as JPEG." : "That is a film.";
        }
        if (text(file, 0, 3).equals("GIF")) {
            return "That is a GIF picture; save it as PNG.";
        }
        return file.length == 0 ? "That file is empty." : "That file is no picture.";
    }

    private static String text(byte[] file, int from, int length) {
        return file.length < from + length ? "" : new String(file, from, length, StandardCharsets.ISO_8859_1);
    }

    private static boolean startsWith(byte[] file, byte[] start) {
        return file.length >= start.length && java.util.Arrays.equals(file, 0, start.length, start, 0, start.length);
    }
}
