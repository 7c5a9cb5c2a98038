package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;
import java.util.List;

/**
 * A scrap of known area under a known weight: its thickness without and with.
 *
 * @param areaU one standard uncertainty of the area, mm²
 * @param thicknessU of each thickness, mm
 */
public record WeightTest(
        String material, double areaMm2, double areaU, double massG, double freeMm, double loadedMm, double thicknessU)
        implements BenchTest {
    private static final double NEWTONS_PER_GRAM = 9.80665e-3;

    /** Less than this many of its own uncertainties is no difference. */
    private static final double TOLD_APART = 2;

    public WeightTest {
        if (!(areaMm2 > 0) || !(massG > 0) || !(freeMm > 0) || !(loadedMm > 0) || !(thicknessU > 0) || !(areaU >= 0)) {
            throw new IllegalArgumentException("area, weight, thicknesses and their uncertainty are above zero");
        }
    }

    /** The modulus; the exponent is the one the table has. Missing if the two thicknesses cannot be told apart. */
    public Outcome<Fit> modulus(Materials materials) {
        double given = freeMm - loadedMm;
        if (given < TOLD_APART * Math.sqrt(2) * thicknessU) {
            return Outcome.missing("a heavier weight or a smaller scrap: the two thicknesses must differ more");
        }
        Cell exponent = materials.cell(material, Property.EXPONENT);
        double p = exponent.value();
        double value = massG * NEWTONS_PER_GRAM / areaMm2 * Math.pow(freeMm / given, p);
        double byFree = p * (1 / freeMm - 1 / given) * thicknessU;
        double byLoaded = p / given * thicknessU;
        double byArea = areaU / areaMm2;
        double byExponent = Math.log(freeMm / given) * exponent.u();
        double share = Math.sqrt(byFree * byFree + byLoaded * byLoaded + byArea * byArea + byExponent * byExponent);
        return Outcome.of(
                new Fit(material, Property.MODULUS, value, value * share, inWords()), "weight and two thicknesses");
    }

    @Override
    public Outcome<List<Fit>> fits(Materials materials) {
        return modulus(materials).map(List::of);
    }

    @Override
    public String inWords() {
        return "%s, %s mm² under %s g: %s mm to %s mm".formatted(material, areaMm2, massG, freeMm, loadedMm);
    }
}
