package hornwright.desk.paper;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * A text as a square a camera reads: QR code, error level Q, so that a quarter of it may be smudged, with the quiet zone
 * of four modules. Source: ISO/IEC 18004.
 *
 * @param modules along one side, quiet zone included
 * @param path the dark modules as the data of an SVG path, one unit a module
 */
record Code(int modules, String path) {
    private static final int QUIET = 4;

    static Code of(String text) {
        try {
            BitMatrix dark = new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            1,
                            1,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.Q,
                                    EncodeHintType.MARGIN,
                                    QUIET,
                                    EncodeHintType.CHARACTER_SET,
                                    "UTF-8"));
            return new Code(dark.getWidth(), path(dark));
        } catch (WriterException e) {
            throw new PaperFault("no code holds this text: " + text);
        }
    }

    /** Row by row, each run of dark modules one rectangle. */
    private static String path(BitMatrix dark) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < dark.getHeight(); y++) {
            int x = 0;
            while (x < dark.getWidth()) {
                int from = x;
                while (x < dark.getWidth() && dark.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append("M%d %dh%dv1h%dz".formatted(from, y, x - from, from - x));
                }
                x++;
            }
        }
        return path.toString();
    }
}
