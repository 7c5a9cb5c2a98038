package hornwright.bench.survey;

import org.jspecify.annotations.Nullable;

/** What a person settled; it outranks every proposal of the plan. */
public sealed interface Decision {
    /** Why, in a few words; shown as the reason. */
    String why();

    /** What was settled, "replace like for like with kid leather". */
    default String inWords() {
        return switch (this) {
            case Use use -> use.use().word();
            case Treat treat ->
                treat.treatment().word() + (treat.material() == null ? "" : " with " + treat.material());
            case Height height -> height.frontMm() + " mm at the front";
            case PadThickness thickness -> thickness.thicknessMm() + " mm";
        };
    }

    /** What it settles, such as {@code treat.pad.f}; a later decision about the same thing takes its place. */
    default String about() {
        return switch (this) {
            case Use use -> "use";
            case Treat treat -> "treat." + treat.place();
            case Height height -> "height." + height.cup();
            case PadThickness thickness -> "pad-thickness." + thickness.cup();
        };
    }

    /** What the horn is for. */
    record Use(AgreedUse use, String why) implements Decision {}

    /** What happens at a place, and with which material. */
    record Treat(
            String place, Treatment treatment, @Nullable String material, String why) implements Decision {}

    /** How high a cup shall stand open, at the front edge of its hole. */
    record Height(String cup, double frontMm, String why) implements Decision {}

    /** Which stocked pad thickness a cup shall get. */
    record PadThickness(String cup, double thicknessMm, String why) implements Decision {}
}
