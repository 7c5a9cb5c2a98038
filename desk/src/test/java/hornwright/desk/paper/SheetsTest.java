package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.desk.paper.BenchSheet.HeightLine;
import hornwright.desk.paper.BenchSheet.RegulationLine;
import hornwright.desk.paper.OwnerReport.Item;
import hornwright.desk.paper.OwnerReport.Section;
import java.util.Collections;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

final class SheetsTest {
    private static final Figure MAP = new Figure(
            "<circle cx=\"40\" cy=\"40\" r=\"20\" fill=\"none\" stroke=\"#000000\"/>",
            "0 0 88 240",
            88,
            240,
            List.of(Label.of("low B♭", 40, 40, 3, Label.Anchor.MIDDLE, Label.Face.TEXT)),
            "The horn unrolled");

    private static BenchSheet bench() {
        return new BenchSheet(
                "Tarrant & Loe alto",
                "Alto 41207",
                MAP,
                Collections.nCopies(24, new HeightLine("low B♭", "9.4 ± 0.4", "9.8 ± 0.3", "felt 5.0")),
                Collections.nCopies(20, new RegulationLine("D closes F♯", "light, then feel both", "E and F to F♯")),
                List.of("Palm D: key fit first; its figures are provisional."));
    }

    private static OwnerReport report() {
        return new OwnerReport(
                "Tarrant & Loe alto",
                "Alto 41207, Quayside Winds",
                "We propose to keep what is sound.",
                MAP,
                List.of(
                        new Section("What stays", List.of(), List.of(new Item("Neck cork", "sound"))),
                        new Section("What cannot be undone", List.of("Nothing."), List.of())));
    }

    @ParameterizedTest
    @EnumSource
    void the_bench_sheet_is_an_archival_file_on_either_paper(PaperSize size) throws Exception {
        assertThat(Validator.complaints(bench().pdf(size), PDFAFlavour.PDFA_2_B))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void the_report_can_be_read_aloud_on_either_paper(PaperSize size) throws Exception {
        byte[] pdf = report().pdf(size);
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void the_words_of_a_sheet_can_be_read_back() throws Exception {
        try (var document = Loader.loadPDF(bench().pdf(PaperSize.A4))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("low B♭", "9.8 ± 0.3", "D closes F♯", "Palm D: key fit first");
        }
    }
}
