package hornwright.bench.material;

import hornwright.bench.horn.Word;
import java.util.List;

/** One column of the table of materials. */
public enum Property implements Word {
    /** Pressure at full strain, MPa, in pressure = modulus × strain^exponent. */
    MODULUS("modulus_MPa", "MPa", "stiffness"),
    EXPONENT("exponent", "", "exponent"),
    /** Share of its speed a foot gets back. */
    RESTITUTION("restitution", "", "gives back"),
    DENSITY("density_kg_m3", "kg/m³", "density"),
    /** Share of its thickness lost in the first weeks. */
    SETTLING("settling", "", "packs by"),
    /** Of the skin of a class of pads: force for each mm of rim and each mm the pad gives, N/mm², so MPa. */
    SEAT("seat_MPa", "MPa", "skin"),
    /** The same once the felt has taken over. */
    FELT("felt_MPa", "MPa", "felt"),
    /** How far the skin gives before that. */
    FELT_FROM("felt-from_mm", "mm", "felt takes over after");

    private final String word;
    private final String unit;
    private final String label;

    Property(String word, String unit, String label) {
        this.word = word;
        this.unit = unit;
        this.label = label;
    }

    /** What is known of a class of pads. */
    public static List<Property> ofPads() {
        return List.of(SEAT, FELT, FELT_FROM);
    }

    /** The columns of cork, felt and the rest; a seat is a figure of a pad. */
    public static List<Property> ofSheets() {
        return List.of(MODULUS, EXPONENT, RESTITUTION, DENSITY, SETTLING);
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
        return switch (this) {
            case SETTLING -> "settling." + slug;
            case SEAT, FELT, FELT_FROM -> "pad-class." + slug + "." + word;
            default -> "material." + slug + "." + word;
        };
    }
}
