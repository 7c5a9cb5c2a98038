package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;
import java.util.List;

/** Something a shop did at its bench to learn a figure of a material, as it was read. */
public sealed interface BenchTest permits WeightTest, PackingTest, PadTest, PadLoadsTest, BounceTest {
    /** The material or the class of pad it was done with. */
    String material();

    /** The figures it gives; missing, with advice, when the readings do not tell. */
    Outcome<List<Fit>> fits(Materials materials);

    /** What was done and read, in words. */
    String inWords();
}
