package hornwright.desk.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Takes pictures as telephones do: lying on their side, and telling where they were taken, with what and by whom. */
public final class Camera {
    static final String[] SECRETS = {"SECRETMAKER", "SECRETMODEL", "SECRETOWNER", "GPSHERE", "secretxmp"};
    private static final int SIDE = 8;

    private Camera() {}

    /** Upright it is 3 by 2 squares, red at the top left, green at the top right, blue at the bottom left. */
    static BufferedImage upright() {
        BufferedImage picture = new BufferedImage(3 * SIDE, 2 * SIDE, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                boolean left = x < SIDE;
                boolean right = x >= 2 * SIDE;
                boolean top = y < SIDE;
                picture.setRGB(x, y, top && left ? 0xff0000 : top && right ? 0x00ff00 : !top && left ? 0x0000ff : 0);
            }
        }
        return picture;
    }

    /**
     * The same picture stored so that row 0 and column 0 of what is stored are the sides EXIF says of that orientation:
     * 1 top left, 2 top right, 3 bottom right, 4 bottom left, 5 left top, 6 right top, 7 right bottom, 8 left bottom.
     * Source: JEITA CP-3451, table of tag 274, from memory.
     */
    static BufferedImage stored(BufferedImage upright, int turn) {
        int w = upright.getWidth();
        int h = upright.getHeight();
        boolean lying = turn >= 5;
        BufferedImage stored = new BufferedImage(lying ? h : w, lying ? w : h, BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < stored.getHeight(); row++) {
            for (int column = 0; column < stored.getWidth(); column++) {
                int y = lying
                        ? (turn == 5 || turn == 6 ? column : h - 1 - column)
                        : (turn == 1 || turn == 2 ? row : h - 1 - row);
                int x = lying
                        ? (turn == 5 || turn == 8 ? row : w - 1 - row)
                        : (turn == 1 || turn == 4 ? column : w - 1 - column);
                stored.setRGB(column, row, upright.getRGB(x, y));
            }
        }
        return stored;
    }

    static byte[] file(BufferedImage picture, String format) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(picture, format, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A JPEG of that picture with a full EXIF of its place, camera and owner, an XMP, a comment and a page at its end. */
    public static byte[] photograph(BufferedImage stored, int turn, ByteOrder order) {
        byte[] plain = file(stored, "jpeg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        segment(out, 0xe1, exif(turn, order));
        segment(out, 0xe1, "http://ns.adobe.com/xap/1.0/\0<x>secretxmp</x>".getBytes(StandardCharsets.UTF_8));
        segment(out, 0xfe, "SECRETOWNER says".getBytes(StandardCharsets.UTF_8));
        out.write(plain, 2, plain.length - 2);
        out.writeBytes("<script>SECRETOWNER</script>".getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    private static void segment(ByteArrayOutputStream out, int marker, byte[] content) {
        out.write(0xff);
        out.write(marker);
        out.write((content.length + 2) >> 8);
        out.write((content.length + 2) & 0xff);
        out.writeBytes(content);
    }

    private static byte[] exif(int turn, ByteOrder order) {
        byte[] bytes = new byte[300];
        ByteBuffer tiff = ByteBuffer.wrap(bytes).order(order);
        tiff.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        tiff.putShort((short) 42).putInt(8).putShort((short) 5);
        text(tiff, 0x010f, 120, "SECRETMAKER");
        text(tiff, 0x0110, 140, "SECRETMODEL");
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) turn)
                .putShort((short) 0);
        text(tiff, 0x013b, 160, "SECRETOWNER");
        tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(180);
        tiff.putInt(0);
        tiff.position(180);
        tiff.putShort((short) 1);
        text(tiff, 0x001d, 220, "GPSHERE");
        byte[] whole = new byte[306];
        System.arraycopy("Exif\0\0".getBytes(StandardCharsets.US_ASCII), 0, whole, 0, 6);
        System.arraycopy(bytes, 0, whole, 6, 300);
        return whole;
    }

    private static void text(ByteBuffer tiff, int tag, int at, String text) {
        byte[] bytes = (text + "\0").getBytes(StandardCharsets.US_ASCII);
        tiff.putShort((short) tag).putShort((short) 2).putInt(bytes.length).putInt(at);
        tiff.put(at, bytes);
    }
}
