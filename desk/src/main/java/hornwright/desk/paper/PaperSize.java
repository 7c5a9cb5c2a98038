package hornwright.desk.paper;

import java.util.Locale;

/** The two papers a shop has. Both carry the same content: 190 by 254 mm fit either with 10 mm to spare. */
public enum PaperSize {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    PaperSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** The CSS page rule that centres the common area of content. */
    public String pageRule() {
        double side = (widthMm - 190) / 2;
        double top = (heightMm - 254) / 2;
        return String.format(
                Locale.ROOT, "@page { size: %.1fmm %.1fmm; margin: %.2fmm %.2fmm; }", widthMm, heightMm, top, side);
    }

    /** The same for a sheet that lies on its side. */
    public String lyingRule() {
        double side = (heightMm - 254) / 2;
        double top = (widthMm - 190) / 2;
        return String.format(
                Locale.ROOT, "@page { size: %.1fmm %.1fmm; margin: %.2fmm %.2fmm; }", heightMm, widthMm, top, side);
    }
}
