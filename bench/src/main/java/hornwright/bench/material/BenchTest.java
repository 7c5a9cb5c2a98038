package hornwright.bench.material;

import hornwright.engines.quantity.Outcome;

/** Something a shop did at its bench to learn a figure of a material, as it was read. */
public sealed interface BenchTest permits WeightTest, PackingTest, PadTest, BounceTest {
    /** The material or the class of pad it was done with. */
    String material();

    /** The figure it gives; missing, with advice, when the readings do not tell. */
    Outcome<Fit> fit(Materials materials);

    /** What was done and read, in words. */
    String inWords();
}
