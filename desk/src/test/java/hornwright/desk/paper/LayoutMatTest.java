package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

final class LayoutMatTest {
    private static LayoutMat mat(String keyworkName) {
        Keywork keywork = KeyworkFile.shipped(keyworkName).orElseThrow();
        List<MatDisc> discs = keywork.keysInRemovalOrder().stream()
                .flatMap(key -> keywork.cupOf(key).stream())
                .map(cup -> disc(keywork, cup))
                .toList();
        return new LayoutMat(keywork.name(), discs);
    }

    private static MatDisc disc(Keywork keywork, Cup cup) {
        return new MatDisc(
                keywork.nameOf(cup).display(),
                keywork.keyOf(cup).rod(),
                cup.pad().diameterMm(),
                keywork.holeOf(cup).diameterMm(),
                "4.3 to 4.7");
    }

    @ParameterizedTest
    @EnumSource
    void every_pad_is_on_the_mat_at_true_size(PaperSize size) throws Exception {
        LayoutMat mat = mat("tarrant-loe-alto");
        List<Double> circles = DrawnCircles.diametersMm(mat.pdf(size));
        for (MatDisc disc : mat.discs()) {
            assertThat(circles).anySatisfy(drawn -> assertThat(drawn).isCloseTo(disc.diameterMm(), within(0.1)));
        }
        assertThat(circles).hasSize(2 * mat.discs().size());
    }

    @Test
    void the_check_bar_is_100_mm_long() throws Exception {
        assertThat(DrawnCircles.longestLineMm(mat("tarrant-loe-alto").pdf(PaperSize.A4)))
                .isCloseTo(100, within(0.1));
    }

    @Test
    void every_name_and_diameter_can_be_read_back() throws Exception {
        LayoutMat mat = mat("tarrant-loe-tenor");
        try (var document = Loader.loadPDF(mat.pdf(PaperSize.LETTER))) {
            String text = new PDFTextStripper().getText(document);
            mat.discs().forEach(disc -> assertThat(text).contains(disc.name()));
        }
    }

    @Test
    void the_discs_stand_in_order_and_never_overlap() {
        LayoutMat mat = mat("tarrant-loe-tenor");
        List<MatLayout.Sheet> sheets = MatLayout.of(mat.discs());
        assertThat(sheets.stream().flatMap(sheet -> sheet.discs().stream()).map(MatLayout.Standing::disc))
                .containsExactlyElementsOf(mat.discs());
        for (MatLayout.Sheet sheet : sheets) {
            for (MatLayout.Standing one : sheet.discs()) {
                for (MatLayout.Standing other : sheet.discs()) {
                    double apart = Math.hypot(one.x() - other.x(), one.y() - other.y());
                    double needed = (one.disc().diameterMm() + other.disc().diameterMm()) / 2;
                    assertThat(one.equals(other) || apart > needed).isTrue();
                }
            }
        }
    }

    @Test
    void the_mat_is_an_archival_file() throws Exception {
        assertThat(Validator.complaints(mat("tarrant-loe-alto").pdf(PaperSize.A4), PDFAFlavour.PDFA_2_B))
                .isEmpty();
    }
}
