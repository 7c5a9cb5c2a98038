package hornwright.bench.care;

import hornwright.bench.horn.Word;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How an adhesive found on a part comes off, by what it is, by the finish under it, and by the part. Common practice;
 * least intrusive first.
 *
 * @param way what to do
 * @param hazards what to mind
 */
public record AdhesiveRemoval(String way, List<Hazard> hazards) {
    /** What was found. */
    public enum Adhesive implements Word {
        SHELLAC("shellac"),
        HOT_MELT("hot-melt"),
        CONTACT_CEMENT("contact cement"),
        UNKNOWN("unknown");

        private final String word;

        Adhesive(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** What lies under or beside it. */
    public enum Finish implements Word {
        BARE_BRASS("bare brass"),
        SPIRIT_LACQUER("spirit lacquer"),
        BAKED_LACQUER("baked lacquer"),
        SILVER_PLATE("silver plate"),
        GOLD_WASH("gold wash"),
        NICKEL_PLATE("nickel plate");

        private final String word;

        Finish(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        static Optional<Finish> of(String said) {
            return Stream.of(values())
                    .filter(finish -> finish.word.equals(said))
                    .findFirst();
        }
    }

    public AdhesiveRemoval {
        hazards = List.copyOf(hazards);
    }

    /**
     * @param heatBearing whether the part may be warmed: no pearl, celluloid or soft solder close by
     */
    public static AdhesiveRemoval of(Adhesive adhesive, Finish finish, boolean heatBearing) {
        return switch (adhesive) {
            case SHELLAC ->
                heatBearing
                        ? new AdhesiveRemoval(
                                "Warm until it softens, lift with wood, then wipe the warm rest with a dry cloth.",
                                List.of(Hazard.HEAT))
                        : coldShellac(finish);
            case HOT_MELT ->
                heatBearing
                        ? new AdhesiveRemoval("Warm gently and peel it off in one piece.", List.of(Hazard.HEAT))
                        : new AdhesiveRemoval("Chill it and pick it off with wood; no metal edge.", List.of());
            case CONTACT_CEMENT -> contactCement(finish);
            case UNKNOWN ->
                new AdhesiveRemoval(
                        "Try dry first: wood, then your fingernail. Try anything wet on a hidden spot and wait a minute.",
                        List.of(Hazard.SOLVENT));
        };
    }

    private static AdhesiveRemoval coldShellac(Finish finish) {
        return switch (finish) {
            case SPIRIT_LACQUER ->
                new AdhesiveRemoval(
                        "Chip it off dry with wood. No alcohol: it takes this lacquer with it.",
                        List.of(Hazard.SOLVENT));
            case BARE_BRASS, BAKED_LACQUER, SILVER_PLATE, GOLD_WASH, NICKEL_PLATE ->
                new AdhesiveRemoval(
                        "Chip most of it off dry, then a swab just damp with alcohol, inside the cup only.",
                        List.of(Hazard.SOLVENT));
        };
    }

    private static AdhesiveRemoval contactCement(Finish finish) {
        return switch (finish) {
            case SPIRIT_LACQUER, BAKED_LACQUER ->
                new AdhesiveRemoval(
                        "Roll it off with the thumb or a crepe block; no ketone, which lifts lacquer.",
                        List.of(Hazard.SOLVENT));
            case BARE_BRASS, SILVER_PLATE, GOLD_WASH, NICKEL_PLATE ->
                new AdhesiveRemoval(
                        "Roll off what comes, then a swab of the cement's own thinner, sparing.",
                        List.of(Hazard.SOLVENT));
        };
    }

    /** The adhesive a word stands for; anything not known is unknown. */
    public static Adhesive named(String material) {
        String word = material.toLowerCase(Locale.ROOT);
        if (word.contains("shellac")) {
            return Adhesive.SHELLAC;
        }
        if (word.contains("hot-melt") || word.contains("hot melt")) {
            return Adhesive.HOT_MELT;
        }
        return word.contains("contact") || word.contains("cement") ? Adhesive.CONTACT_CEMENT : Adhesive.UNKNOWN;
    }
}
