package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;
import java.util.List;

/**
 * A pad laid on a ring, such as an offcut of tube with a level end, under a known weight: how high its back stands without
 * and with.
 *
 * @param material the class of pad: "soft", "medium", "firm"
 * @param ringMm diameter of the ring, mean of inside and outside
 * @param thicknessU one standard uncertainty of each height, mm
 */
public record PadTest(String material, double ringMm, double massG, double freeMm, double loadedMm, double thicknessU)
        implements BenchTest {
    private static final double NEWTONS_PER_GRAM = 9.80665e-3;
    private static final double TOLD_APART = 2;

    public PadTest {
        if (!(ringMm > 0) || !(massG > 0) || !(freeMm > 0) || !(loadedMm > 0) || !(thicknessU > 0)) {
            throw new IllegalArgumentException("ring, weight, heights and their uncertainty are above zero");
        }
    }

    /** Weight over the length of the ring and what the pad gave: N per mm of rim and mm, so MPa. It is the skin's. */
    @Override
    public Outcome<List<Fit>> fits(Materials materials) {
        double given = freeMm - loadedMm;
        if (given < TOLD_APART * Math.sqrt(2) * thicknessU) {
            return Outcome.missing("a heavier weight: the two heights must differ more");
        }
        if (given > materials.value(material, Property.FELT_FROM) + TOLD_APART * thicknessU) {
            return Outcome.missing("a lighter weight, or a second and a third: the felt has taken over under this one");
        }
        double value = massG * NEWTONS_PER_GRAM / (Math.PI * ringMm * given);
        double share = Math.sqrt(2) * thicknessU / given;
        Fit skin = new Fit(material, Property.SEAT, value, value * share, inWords());
        return Outcome.of(List.of(skin), "weight on a ring");
    }

    @Override
    public String inWords() {
        return "%s pad on a ring of %s mm under %s g: %s mm to %s mm"
                .formatted(material, ringMm, massG, freeMm, loadedMm);
    }
}
