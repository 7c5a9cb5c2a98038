package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;

final class PdfTest {
    private static String page(String body) {
        return "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head><title>Probe</title>"
                + "<meta name=\"subject\" content=\"A probe\"/><meta name=\"description\" content=\"A probe\"/><style>"
                + PaperSize.A4.pageRule()
                + " body { font-family: Bench; } h1 { font-family: Engraver; font-weight: normal; }</style></head><body>"
                + body + "</body></html>";
    }

    @Test
    void a_bench_paper_is_pdf_a_2b() throws Exception {
        byte[] pdf = Pdf.render(page("<h1>Low B♭</h1><p>4.3 ± 0.1 mm</p>"), Archival.VISUAL);
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_B)).isEmpty();
    }

    @Test
    void a_paper_for_the_owner_is_pdf_a_2a_and_pdf_ua_1() throws Exception {
        byte[] pdf = Pdf.render(page("<h1>Low B♭</h1><p>G♯ foot</p>"), Archival.ACCESSIBLE);
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_A)).isEmpty();
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFUA_1)).isEmpty();
    }

    @Test
    void flats_sharps_and_minus_signs_survive_to_the_reader() throws Exception {
        byte[] pdf = Pdf.render(page("<p>B♭ F♯ −0.2 ± 0.05 × Ø</p>"), Archival.VISUAL);
        try (var document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document)).contains("B♭ F♯ −0.2 ± 0.05 × Ø");
        }
    }

    @Test
    void a_warning_of_the_renderer_is_a_failure() {
        String faulty = page("<p>x</p>").replace("font-family: Bench;", "font-family: Bench; colr: red;");
        assertThatThrownBy(() -> Pdf.render(faulty, Archival.VISUAL)).isInstanceOf(PaperFault.class);
    }
}
