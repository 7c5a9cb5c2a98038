package hornwright.desk.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** Walks the segments of a JPEG up to its first scan. Source: ITU-T T.81, annex B; JEITA CP-3451. */
final class JpegHead {
    private static final int START_OF_SCAN = 0xda;
    private static final int APP0 = 0xe0;
    private static final int APP1 = 0xe1;
    /** The comment; all from APP1 to it tell something beside the picture. */
    private static final int LAST_SEGMENT = 0xfe;

    private static final int END_OF_IMAGE = 0xffd9;
    private static final long EXIF = 0x457869660000L;
    private static final int ORIENTATION = 0x0112;

    private final ByteBuffer in;
    private int turn = 1;

    JpegHead(byte[] file) {
        this.in = ByteBuffer.wrap(file);
    }

    PictureHead read() {
        in.position(2);
        while (true) {
            int marker = marker();
            if (marker == START_OF_SCAN) {
                throw PictureHead.damaged();
            }
            if (marker == 0x01 || (marker >= 0xd0 && marker <= 0xd7)) {
                continue;
            }
            int end = in.position() + (in.getShort(in.position()) & 0xffff);
            in.getShort();
            if (isFrame(marker)) {
                in.get();
                int height = in.getShort() & 0xffff;
                int width = in.getShort() & 0xffff;
                return new PictureHead(PictureKind.JPEG, width, height, turn);
            }
            if (marker == APP1) {
                exif(end);
            }
            in.position(end);
        }
    }

    /** No segment but those that make the picture, and nothing after its end. */
    boolean isBare() {
        in.position(2);
        int marker = marker();
        while (marker != START_OF_SCAN) {
            if (marker > APP0 && marker <= LAST_SEGMENT) {
                return false;
            }
            in.position(in.position() + (in.getShort(in.position()) & 0xffff));
            marker = marker();
        }
        return (in.getShort(in.limit() - 2) & 0xffff) == END_OF_IMAGE;
    }

    private int marker() {
        if ((in.get() & 0xff) != 0xff) {
            throw PictureHead.damaged();
        }
        int marker;
        do {
            marker = in.get() & 0xff;
        } while (marker == 0xff);
        return marker;
    }

    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    /** A picture whose EXIF cannot be read is taken as upright: a person sees it at once and it can be turned. */
    private void exif(int end) {
        int from = in.position();
        if (end - from < 14 || end > in.limit() || (in.getLong(from) >>> 16) != EXIF) {
            return;
        }
        ByteBuffer tiff = in.slice(from + 6, end - from - 6);
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = tiff.getInt(4) & 0xffffffffL;
        if (directory + 2 > tiff.limit()) {
            return;
        }
        int count = tiff.getShort((int) directory) & 0xffff;
        for (int i = 0; i < count && directory + 2 + 12L * (i + 1) <= tiff.limit(); i++) {
            int entry = (int) directory + 2 + 12 * i;
            if ((tiff.getShort(entry) & 0xffff) == ORIENTATION) {
                int asked = tiff.getShort(entry + 8);
                turn = asked >= 1 && asked <= 8 ? asked : 1;
            }
        }
    }
}
