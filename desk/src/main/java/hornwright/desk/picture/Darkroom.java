package hornwright.desk.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.BufferUnderflowException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes of an uploaded file the pictures that are kept. Everything is painted anew, so no segment of the upload survives:
 * no place, no camera, no owner, no hidden small picture, nothing that would be a page to a browser. One at a time, so
 * that many telephones cannot fill the memory.
 */
public final class Darkroom {
    /** Longest side of a picture that is kept; a twelve-megapixel telephone fits whole. */
    public static final int LONGEST_KEPT = 4096;

    static final int LONGEST_SMALL = 640;
    private static final int LONGEST_DECODED = 6144;
    private static final float GOOD = 0.9f;
    private static final float LIGHT = 0.8f;

    private Darkroom() {}

    /** {@link UnreadablePicture} says why a file is no photograph for us. */
    public static synchronized CleanPicture develop(byte[] upload) {
        PictureHead head = PictureHead.of(upload);
        BufferedImage upright = Turned.upright(decoded(upload, head), head.turn(), LONGEST_KEPT);
        byte[] large = written(upright, GOOD);
        byte[] small = written(Turned.within(upright, LONGEST_SMALL), LIGHT);
        return new CleanPicture(large, small, upright.getWidth(), upright.getHeight());
    }

    /** Whether a file is a JPEG as this room writes it: the picture and nothing told beside it. */
    public static boolean isClean(byte[] file) {
        try {
            PictureHead head = PictureHead.of(file);
            return head.kind() == PictureKind.JPEG && new JpegHead(file).isBare();
        } catch (UnreadablePicture
                | BufferUnderflowException
                | IndexOutOfBoundsException
                | IllegalArgumentException e) {
            return false;
        }
    }

    /** Every n-th pixel only of what is far larger than what is kept, so that memory stays flat. */
    private static BufferedImage decoded(byte[] upload, PictureHead head) {
        ImageReader reader =
                ImageIO.getImageReadersByFormatName(head.kind().name()).next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(upload))) {
            reader.setInput(in, true, true);
            ImageReadParam asked = reader.getDefaultReadParam();
            int every = Math.ceilDiv(Math.max(head.width(), head.height()), LONGEST_DECODED);
            asked.setSourceSubsampling(every, every, 0, 0);
            return reader.read(0, asked);
        } catch (IOException | RuntimeException e) {
            throw PictureHead.damaged();
        } finally {
            reader.dispose();
        }
    }

    private static byte[] written(BufferedImage picture, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam asked = writer.getDefaultWriteParam();
            asked.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            asked.setCompressionQuality(quality);
            writer.setOutput(out);
            writer.write(null, new IIOImage(picture, null, null), asked);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
