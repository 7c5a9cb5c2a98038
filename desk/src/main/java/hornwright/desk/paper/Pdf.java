package hornwright.desk.paper;

import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Turns one XHTML page into a PDF with embedded fonts. Two renderings of the same page are the same but for their date. */
public final class Pdf {
    private static final String FONTS = "/hornwright/paper/fonts/";

    private Pdf() {}

    /**
     * @param xhtml a well-formed page with lang, title and the meta names subject and description
     * @throws PaperFault if the renderer complains about anything
     */
    public static byte[] render(String xhtml, Archival archival) {
        Complaints complaints = new Complaints();
        synchronized (Pdf.class) {
            XRLog.setLoggerImpl(complaints);
            XRLog.setLoggingEnabled(true);
            byte[] pdf = run(xhtml, archival);
            List<String> said = complaints.list();
            if (!said.isEmpty()) {
                throw new PaperFault(String.join("; ", said));
            }
            return pdf;
        }
    }

    private static byte[] run(String xhtml, Archival archival) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePdfAConformance(
                    archival == Archival.VISUAL
                            ? PdfRendererBuilder.PdfAConformance.PDFA_2_B
                            : PdfRendererBuilder.PdfAConformance.PDFA_2_A);
            builder.usePdfUaAccessibility(archival == Archival.ACCESSIBLE);
            builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
            builder.useSVGDrawer(new BatikSVGDrawer());
            font(builder, "DejaVuSansCondensed.ttf", "Bench", 400, FontStyle.NORMAL);
            font(builder, "DejaVuSansCondensed-Bold.ttf", "Bench", 700, FontStyle.NORMAL);
            font(builder, "DejaVuSerifCondensed-Italic.ttf", "Engraver", 400, FontStyle.NORMAL);
            builder.withHtmlContent(xhtml, null);
            builder.withProducer("Hornwright");
            builder.toStream(out);
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
        FSSupplier<InputStream> stream = () -> {
            InputStream found = Pdf.class.getResourceAsStream(FONTS + file);
            if (found == null) {
                throw new PaperFault("the program lacks its font " + file);
            }
            return found;
        };
        builder.useFont(stream, family, weight, style, true);
    }
}
