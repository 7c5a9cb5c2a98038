package hornwright.desk.web.view;

import hornwright.bench.horn.PlaceKind;
import java.util.List;

/**
 * The materials offered for a kind of place when somebody says what is there. The same for every horn, so that the
 * choice gives nothing of the as-built sheet away. Common practice; any other word may be typed.
 */
public final class Palette {
    private static final List<String> CORK_OR_FELT = List.of(
            "natural cork",
            "cork-rubber composite",
            "woven wool felt",
            "pressed felt",
            "synthetic felt",
            "leather",
            "PTFE",
            "rubber");
    private static final List<String> METAL = List.of("brass", "nickel silver", "steel", "silver plate", "plastic");

    private Palette() {}

    public static List<String> of(PlaceKind kind) {
        return switch (kind) {
            case PAD ->
                List.of(
                        "kid leather over woven wool felt",
                        "brown leather over pressed felt",
                        "synthetic felt",
                        "natural cork",
                        "fish skin over felt");
            case RESONATOR -> List.of("brass", "nickel silver", "domed plastic", "flat plastic", "none");
            case RIVET, PAD_CENTRE -> List.of("brass", "nickel silver", "steel", "thread", "none");
            case ADHESIVE -> List.of("shellac", "hot-melt", "contact cement", "none");
            case FOOT, BUMPER, GUARD, LINK, UPPER_STOP, ROCKER_CONTACT -> CORK_OR_FELT;
            case SLEEVE, SADDLE, GUIDE ->
                List.of("plain cotton tubing", "rubberised cotton tubing", "PTFE tube", "plastic tube", "natural cork");
            case SPRING -> List.of("blued steel", "stainless steel", "bronze", "copper-beryllium");
            case NECK_CORK -> List.of("natural cork", "cork-rubber composite", "synthetic cork");
            case PEARL, THUMB_REST -> List.of("mother-of-pearl", "plastic", "abalone", "metal");
            case FINISH, ENGRAVING ->
                List.of("clear lacquer", "coloured lacquer", "silver plate", "gold wash", "nickel plate", "bare brass");
            default -> METAL;
        };
    }
}
