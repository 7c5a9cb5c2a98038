package hornwright.bench.plan.origin;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What later repairers commonly put on an old horn (common practice). It proves nothing by itself; it is said beside a
 * finding so that nobody takes a good repair for the factory's own.
 */
public final class LaterUse {
    private static final List<String> LATER = List.of(
            "hot-melt",
            "contact cement",
            "synthetic",
            "cork-rubber",
            "ptfe",
            "microfibre",
            "neoprene",
            "silicone",
            "domed plastic",
            "flat plastic",
            "plastic tube",
            "stainless steel",
            "brown leather over pressed felt",
            "clear lacquer");

    private LaterUse() {}

    /** One line, where the material is of that sort; nothing for what the trade has always used. */
    public static Optional<String> note(String material) {
        String said = material.toLowerCase(Locale.ROOT);
        return LATER.stream().anyMatch(said::contains)
                ? Optional.of("later repairers commonly use " + material)
                : Optional.empty();
    }
}
