package hornwright.bench.material;

/** One piece of material of a thickness. */
public record Sheet(String material, double thicknessMm) {
    public Sheet {
        if (!(thicknessMm >= 0)) {
            throw new IllegalArgumentException("a thickness is not negative");
        }
    }
}
