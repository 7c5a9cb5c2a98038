package hornwright.bench.material;

import hornwright.bench.horn.Word;

/** One column of the table of materials. */
public enum Property implements Word {
    /** Pressure at full strain, MPa, in pressure = modulus × strain^exponent. */
    MODULUS("modulus_MPa", "MPa", "stiffness"),
    EXPONENT("exponent", "", "exponent"),
    /** Share of its speed a foot gets back. */
    RESTITUTION("restitution", "", "gives back"),
    DENSITY("density_kg_m3", "kg/m³", "density"),
    /** Share of its thickness lost in the first weeks. */
    SETTLING("settling", "", "packs by");

    private final String word;
    private final String unit;
    private final String label;

    Property(String word, String unit, String label) {
        this.word = word;
        this.unit = unit;
        this.label = label;
    }

    /** The head of its column. */
    public String label() {
        return label;
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
