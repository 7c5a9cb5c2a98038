package hornwright.bench.material;

import hornwright.bench.horn.Word;

/** One column of the table of materials. */
public enum Property implements Word {
    /** Pressure at full strain, MPa, in pressure = modulus × strain^exponent. */
    MODULUS("modulus_MPa", "MPa"),
    EXPONENT("exponent", ""),
    /** Share of its speed a foot gets back. */
    RESTITUTION("restitution", ""),
    DENSITY("density_kg_m3", "kg/m³"),
    /** Share of its thickness lost in the first weeks. */
    SETTLING("settling", "");

    private final String word;
    private final String unit;

    Property(String word, String unit) {
        this.word = word;
        this.unit = unit;
    }

    @Override
    public String word() {
        return word;
    }

    public String unit() {
        return unit;
    }

    /** The shop rule that holds this figure of a material. */
    String rule(String material) {
        String slug = material.replace(' ', '-');
        return this == SETTLING ? "settling." + slug : "material." + slug + "." + word;
    }
}
