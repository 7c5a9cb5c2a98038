package hornwright.bench.plan;

import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PadClass;
import java.util.List;
import java.util.Locale;

/**
 * The class of pad a cup gets: what a person settled for it, else for the whole horn, else the usual one.
 *
 * @param why in words
 * @param settled whether a person chose
 */
public record ClassOfPad(PadClass is, String why, boolean settled) {
    private static final ClassOfPad UNSETTLED =
            new ClassOfPad(PadClass.USUAL, "the usual class; nobody chose another", false);

    public static ClassOfPad of(List<Decision> decisions, String cup) {
        ClassOfPad horn = UNSETTLED;
        ClassOfPad own = null;
        for (Decision decision : decisions) {
            if (decision instanceof Decision.PadSoftness pads) {
                if (pads.cup() == null) {
                    horn = new ClassOfPad(pads.padClass(), "settled for the whole horn: " + pads.why(), true);
                } else if (pads.cup().equals(cup)) {
                    own = new ClassOfPad(pads.padClass(), "settled for this pad: " + pads.why(), true);
                }
            }
        }
        return own == null ? horn : own;
    }

    /** Whether a pad of this class over a hole as bad as that is a way round the hole. */
    public boolean isCompromise(double rimGapMm, double acceptMm) {
        return is == PadClass.SOFT && rimGapMm > acceptMm;
    }

    /** What is to be said of it then. */
    public static Advice compromise(double rimGapMm) {
        return Advice.of(String.format(
                Locale.ROOT,
                "A soft pad over this hole is a compromise: its rim gapes %.2f mm. It seals by force, feels spongy and"
                        + " hardens; the hole stays as it is.",
                rimGapMm));
    }
}
