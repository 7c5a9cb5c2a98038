package hornwright.bench.survey;

import hornwright.bench.horn.AdjustingScrew;
import hornwright.bench.horn.Link;
import java.time.LocalDate;
import java.util.Locale;
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
            case PadSoftness pads -> pads.padClass().word() + (pads.cup() == null ? " pads" : " pad");
            case HandedOver handed ->
                "from edit %d, to be looked at again on %s".formatted(handed.edit(), handed.recheck());
            case Contact contact -> contact.words();
        };
    }

    /** What it settles, such as {@code treat.pad.f}; a later decision about the same thing takes its place. */
    default String about() {
        return switch (this) {
            case Use use -> "use";
            case Treat treat -> "treat." + treat.place();
            case Height height -> "height." + height.cup();
            case PadThickness thickness -> "pad-thickness." + thickness.cup();
            case PadSoftness pads -> pads.cup() == null ? "pad-class" : "pad-class." + pads.cup();
            case HandedOver handed -> "hand-over";
            case Contact contact -> "contact." + contact.link();
        };
    }

    /** What the horn is for. */
    record Use(AgreedUse use, String why) implements Decision {}

    /** What happens at a place, and with which material. */
    record Treat(
            String place, Treatment treatment, @Nullable String material, String why) implements Decision {}

    /** How high a cup shall stand open, at the front edge of its hole. */
    record Height(String cup, double frontMm, String why) implements Decision {}

    /** How much is added to what lies in a contact, or taken off where it is below zero. */
    record Contact(String link, double changeMm, String why) implements Decision {
        /** "take 0.08 mm", to the hundredth a gauge shows. */
        public String words() {
            return String.format(Locale.ROOT, changeMm < 0 ? "take %.2f mm" : "add %.2f mm", Math.abs(changeMm));
        }

        /** The same where that contact has a screw: "turn the screw out by 0.20 turns, 0.08 mm". */
        public String words(Link at) {
            AdjustingScrew screw = at.screw();
            return screw == null
                    ? words()
                    : String.format(
                            Locale.ROOT,
                            "turn the screw %s by %.2f turns, %.2f mm",
                            changeMm < 0 ? "out" : "in",
                            Math.abs(screw.turns(changeMm)),
                            Math.abs(changeMm));
        }
    }

    /** Which stocked pad thickness a cup shall get. */
    record PadThickness(String cup, double thicknessMm, String why) implements Decision {}

    /**
     * Which class of pad a cup shall get.
     *
     * @param cup null: every cup of the horn that has no choice of its own
     */
    record PadSoftness(@Nullable String cup, PadClass padClass, String why) implements Decision {}

    /**
     * The horn went back. It settles nothing of the plan; it says which edit the owner's paper was made from, so that the
     * horn as it was signed can be set beside the horn as it is.
     *
     * @param edit the last edit the paper knew of
     * @param paper name of the paper in the store, the SHA-256 of its bytes
     * @param recheck the day it is looked at again, "2026-12-25"
     */
    record HandedOver(long edit, String paper, String recheck, String why) implements Decision {
        public HandedOver {
            LocalDate.parse(recheck);
        }
    }
}
