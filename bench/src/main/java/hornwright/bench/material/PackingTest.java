package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;
import java.util.List;

/**
 * A piece measured fresh and again after its first weeks on the horn.
 *
 * @param thicknessU one standard uncertainty of each thickness, mm
 */
public record PackingTest(String material, double freshMm, double packedMm, double thicknessU) implements BenchTest {
    public PackingTest {
        if (!(freshMm > 0) || !(packedMm > 0) || !(thicknessU > 0)) {
            throw new IllegalArgumentException("thicknesses and their uncertainty are above zero");
        }
    }

    /** The share of its thickness it lost. */
    public Fit settling() {
        double share = 1 - packedMm / freshMm;
        double u = thicknessU / freshMm * Math.hypot(1, packedMm / freshMm);
        return new Fit(material, Property.SETTLING, share, u, inWords());
    }

    @Override
    public Outcome<List<Fit>> fits(Materials materials) {
        return Outcome.of(List.of(settling()), "fresh and packed");
    }

    @Override
    public String inWords() {
        return "%s: %s mm fresh, %s mm packed".formatted(material, freshMm, packedMm);
    }
}
