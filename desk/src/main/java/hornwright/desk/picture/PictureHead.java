package hornwright.desk.picture;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;

/**
 * What a picture says of itself before it is decoded.
 *
 * @param width in pixels, as stored
 * @param turn how it is to be turned, 1 to 8 as EXIF counts; 1 is upright. Source: JEITA CP-3451, tag 274
 */
record PictureHead(PictureKind kind, int width, int height, int turn) {
    /** Twenty thousand pixels a side and a hundred million in all hold every camera at a bench and no bomb. */
    static final int LONGEST_SIDE = 20_000;

    static final long MOST_PIXELS = 100_000_000L;

    static PictureHead of(byte[] file) {
        try {
            PictureKind kind = PictureKind.of(file);
            PictureHead head = kind == PictureKind.JPEG ? new JpegHead(file).read() : png(file);
            head.requireSize();
            return head;
        } catch (BufferUnderflowException | IndexOutOfBoundsException | IllegalArgumentException cutShort) {
            throw damaged();
        }
    }

    static UnreadablePicture damaged() {
        return new UnreadablePicture("The picture is damaged or cut short; send it again.");
    }

    private static PictureHead png(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file);
        in.position(12);
        if (in.getInt() != 0x49484452) {
            throw damaged();
        }
        return new PictureHead(PictureKind.PNG, in.getInt(), in.getInt(), 1);
    }

    private void requireSize() {
        if (width < 1 || height < 1) {
            throw damaged();
        }
        if (width > LONGEST_SIDE || height > LONGEST_SIDE || (long) width * height > MOST_PIXELS) {
            throw new UnreadablePicture(
                    "The picture says it is %,d by %,d; at most 20,000 a side and 100 million pixels in all are taken."
                            .formatted(width, height));
        }
    }
}
