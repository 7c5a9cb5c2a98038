package hornwright.desk.paper;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import hornwright.desk.drawing.LinkedStack;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.pdfa.flavours.PDFAFlavour;

class RegulationSheetTest {
    private static RegulationSheet sheet() {
        Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        LinkedStack stack = LinkedStack.of(
                List.of(
                        new LinkedStack.Column(alto.keys().get("d"), true, 0.21, -0.02),
                        new LinkedStack.Column(alto.keys().get("f-sharp"), true, 0.0, -0.01)),
                List.of(new LinkedStack.Contact(alto.links().get("link.d-to-f-sharp"), "take 0.11")),
                LinkedStack.inWords(alto, "d"));
        return new RegulationSheet(
                "Tarrant & Loe alto 41207",
                "Quayside Winds",
                "Felt at 2 of 24 spots: one contact to alter.",
                "Every linked cup most likely still shuts once the contacts have packed.",
                List.of(Figure.of(stack.print())),
                List.of(new RegulationSheet.Line(
                        "D on F♯", "0.12 ± 0.02", "take 0.11", "take 0.11 mm", "then feel again with D")));
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void it_keeps_for_ever_and_its_words_can_be_searched(PaperSize size) throws Exception {
        byte[] pdf = sheet().pdf(size);
        assertThat(Validator.complaints(pdf, PDFAFlavour.PDFA_2_B)).isEmpty();
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf)) {
            String text = new org.apache.pdfbox.text.PDFTextStripper().getText(document);
            assertThat(text)
                    .contains("D on F♯")
                    .contains("take 0.11")
                    .contains("0.21")
                    .contains("once the contacts have packed");
        }
    }
}
