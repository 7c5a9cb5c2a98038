package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** Labels as a camera and a person read them, from the printed page. */
@Tag("slow")
final class BagLabelsTest {
    private static final String ADDRESS = "http://127.0.0.1:8420/horn/q-0001?place=";

    private static BagLabels sheet(int labels) {
        return new BagLabels(
                "Tarrant & Loe alto 41207",
                "Quayside Winds",
                IntStream.range(0, labels)
                        .mapToObj(i -> new BagLabel(
                                "Low B♭ pad " + i,
                                "kid leather over woven wool felt, 4.3 mm, put by 25 November 2026",
                                "drawer 3, blue box",
                                "q-0001 pad.low-b-flat",
                                ADDRESS + "pad.low-b-flat-" + i))
                        .toList());
    }

    @ParameterizedTest
    @EnumSource
    void every_code_on_the_printed_page_reads_as_its_place(PaperSize size) throws Exception {
        byte[] pdf = sheet(15).pdf(size);
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_B)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> read = new ArrayList<>();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                read.addAll(codes(new PDFRenderer(document).renderImageWithDPI(page, 200)));
            }
            assertThat(read)
                    .containsExactlyInAnyOrderElementsOf(IntStream.range(0, 15)
                            .mapToObj(i -> ADDRESS + "pad.low-b-flat-" + i)
                            .toList());
            assertThat(new PDFTextStripper().getText(document))
                    .contains(
                            "Low B♭ pad 7", "drawer 3, blue box", "Tarrant & Loe alto 41207", "q-0001 pad.low-b-flat");
        }
    }

    @Test
    void a_code_with_a_smudge_still_reads() throws Exception {
        try (PDDocument document = Loader.loadPDF(sheet(1).pdf(PaperSize.A4))) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 200);
            ResultPoint[] corners = found(page)[0].getResultPoints();
            int x = Math.round((corners[0].getX() + corners[2].getX()) / 2);
            int y = Math.round((corners[0].getY() + corners[2].getY()) / 2);
            int blot = Math.round(ResultPoint.distance(corners[0], corners[1]) / 5);
            Graphics2D thumb = page.createGraphics();
            thumb.setColor(Color.BLACK);
            thumb.fillOval(x - blot / 2, y - blot / 2, blot, blot);
            assertThat(codes(page)).containsExactly(ADDRESS + "pad.low-b-flat-0");
        }
    }

    @Test
    void a_module_is_wide_enough_for_any_camera() {
        assertThat(32.0 / Code.of(ADDRESS + "adhesive.pad.low-b-flat").modules())
                .isGreaterThan(0.4);
    }

    private static List<String> codes(BufferedImage page) throws Exception {
        return Arrays.stream(found(page)).map(Result::getText).toList();
    }

    private static Result[] found(BufferedImage page) throws Exception {
        int w = page.getWidth();
        int h = page.getHeight();
        int[] pixels = page.getRGB(0, 0, w, h, null, 0, w);
        return new QRCodeMultiReader()
                .decodeMultiple(
                        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(w, h, pixels))),
                        Map.of(DecodeHintType.TRY_HARDER, true));
    }
}
