package hornwright.desk.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What becomes of a photograph on its way in. Source of the dangers: OWASP ASVS 5.0.0, 5.2.2, 5.2.6, 14.2.8. */
final class DarkroomTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_picture_stored_on_any_side_stands_upright(int turn) throws IOException {
        for (ByteOrder order : new ByteOrder[] {ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN}) {
            byte[] photograph = Camera.photograph(Camera.stored(Camera.upright(), turn), turn, order);
            CleanPicture clean = Darkroom.develop(photograph);
            assertThat(clean.width()).isEqualTo(24);
            assertThat(clean.height()).isEqualTo(16);
            alike(read(clean.large()), Camera.upright());
            alike(read(clean.small()), Camera.upright());
        }
    }

    @Test
    void nothing_is_left_of_place_camera_owner_or_hidden_page() {
        byte[] photograph = Camera.photograph(Camera.upright(), 1, ByteOrder.LITTLE_ENDIAN);
        assertThat(latin(photograph)).contains(Camera.SECRETS);
        CleanPicture clean = Darkroom.develop(photograph);
        assertThat(Darkroom.isClean(photograph)).isFalse();
        for (byte[] kept : new byte[][] {clean.large(), clean.small()}) {
            assertThat(Darkroom.isClean(kept)).isTrue();
            assertThat(latin(kept)).doesNotContain(Camera.SECRETS).doesNotContain("Exif", "<script", "http");
            assertThat(markers(kept)).doesNotContain(0xe1, 0xe2, 0xed, 0xfe);
        }
    }

    @Test
    void a_png_with_a_see_through_ground_becomes_a_picture_on_white() throws IOException {
        BufferedImage clear = new BufferedImage(20, 10, BufferedImage.TYPE_INT_ARGB);
        BufferedImage kept = read(Darkroom.develop(Camera.file(clear, "png")).large());
        assertThat(kept.getRGB(10, 5) & 0xffffff).isEqualTo(0xffffff);
    }

    @Test
    void a_large_picture_is_kept_within_4096_and_its_small_copy_within_640() {
        BufferedImage wide = new BufferedImage(7000, 1000, BufferedImage.TYPE_BYTE_GRAY);
        CleanPicture clean = Darkroom.develop(Camera.file(wide, "jpeg"));
        assertThat(clean.width()).isBetween(3400, 4096);
        assertThat(clean.height() / (double) clean.width()).isEqualTo(1 / 7.0, within(0.002));
        assertThat(PictureHead.of(clean.small()).width()).isEqualTo(640);
    }

    @Test
    void a_picture_that_says_it_is_huge_is_refused_before_it_is_decoded() {
        long before = used();
        long start = System.nanoTime();
        assertThatThrownBy(() -> Darkroom.develop(pngThatSays(50_000, 50_000)))
                .isInstanceOf(UnreadablePicture.class)
                .hasMessageContaining("50,000 by 50,000");
        assertThatThrownBy(() -> Darkroom.develop(pngThatSays(19_999, 19_999))).hasMessageContaining("100 million");
        byte[] jpeg = Camera.file(Camera.upright(), "jpeg");
        int frame = frameAt(jpeg);
        ByteBuffer.wrap(jpeg).putShort(frame + 3, (short) 50_000).putShort(frame + 5, (short) 50_000);
        assertThatThrownBy(() -> Darkroom.develop(jpeg)).hasMessageContaining("50,000 by 50,000");
        assertThat(System.nanoTime() - start).isLessThan(1_000_000_000L);
        assertThat(used() - before).isLessThan(64L << 20);
    }

    @Test
    void other_kinds_are_told_by_their_first_bytes_and_refused_with_a_way_out() {
        refused("RIFF\0\0\0\0WEBPVP8 ", "WebP", "JPEG");
        refused("\0\0\0\u0018ftypheic\0\0\0\0", "HEIC", "most compatible");
        refused("\0\0\0\u0018ftypavif\0\0\0\0", "AVIF");
        refused("GIF89a......", "GIF");
        refused("<html><script>alert(1)</script>", "no picture");
        refused("PK\u0003\u0004", "no picture");
        refused("", "empty");
    }

    @Test
    void a_damaged_picture_is_refused_with_one_sentence_whatever_is_wrong_with_it() {
        Random random = new Random(20261125);
        byte[] whole = Camera.photograph(Camera.stored(Camera.upright(), 6), 6, ByteOrder.LITTLE_ENDIAN);
        byte[] png = Camera.file(Camera.upright(), "png");
        int refused = 0;
        for (int i = 0; i < 2000; i++) {
            byte[] broken = (i % 3 == 0 ? png : whole).clone();
            if (i % 2 == 0) {
                broken = Arrays.copyOf(broken, random.nextInt(broken.length));
            }
            for (int flip = 0; flip < 1 + random.nextInt(8) && broken.length > 0; flip++) {
                broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            }
            try {
                Darkroom.develop(broken);
            } catch (UnreadablePicture sentence) {
                assertThat(sentence.sentence()).endsWith(".");
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(500);
    }

    private static void refused(String file, String... words) {
        assertThatThrownBy(() -> Darkroom.develop(file.getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOf(UnreadablePicture.class)
                .message()
                .contains(words);
    }

    private static void alike(BufferedImage seen, BufferedImage meant) {
        assertThat(seen.getWidth()).isEqualTo(meant.getWidth());
        assertThat(seen.getHeight()).isEqualTo(meant.getHeight());
        for (int y = 4; y < meant.getHeight(); y += 8) {
            for (int x = 4; x < meant.getWidth(); x += 8) {
                for (int shift = 0; shift <= 16; shift += 8) {
                    int a = seen.getRGB(x, y) >> shift & 0xff;
                    int b = meant.getRGB(x, y) >> shift & 0xff;
                    assertThat(Math.abs(a - b)).as("at %d, %d".formatted(x, y)).isLessThan(90);
                }
            }
        }
    }

    /** Every marker before the scan, and none after its end. */
    private static java.util.List<Integer> markers(byte[] jpeg) {
        java.util.List<Integer> found = new java.util.ArrayList<>();
        int at = 2;
        while ((jpeg[at + 1] & 0xff) != 0xda) {
            found.add(jpeg[at + 1] & 0xff);
            at += 2 + ((jpeg[at + 2] & 0xff) << 8 | (jpeg[at + 3] & 0xff));
        }
        assertThat(jpeg[jpeg.length - 2] & 0xff).isEqualTo(0xff);
        assertThat(jpeg[jpeg.length - 1] & 0xff).isEqualTo(0xd9);
        return found;
    }

    private static int frameAt(byte[] jpeg) {
        int at = 2;
        while ((jpeg[at + 1] & 0xff) != 0xc0) {
            at += 2 + ((jpeg[at + 2] & 0xff) << 8 | (jpeg[at + 3] & 0xff));
        }
        return at + 2;
    }

    private static byte[] pngThatSays(int width, int height) {
        byte[] png = Camera.file(Camera.upright(), "png");
        ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        return png;
    }

    private static BufferedImage read(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file));
    }

    private static String latin(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1);
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
