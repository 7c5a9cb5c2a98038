package hornwright.bench.survey;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;

/** What a reading says. Most say an amount; some say a verdict, a grade or a word. u is one standard uncertainty. */
public sealed interface Observed {

    /** "4.35 mm", "back first, 0.12 mm opposite", as a history shows it. */
    default String inWords() {
        return switch (this) {
            case Amount amount ->
                shortened(amount.value()) + " " + amount.unit().symbol();
            case RimGap gap -> "%s mm at %s o'clock".formatted(gap.gapMm(), gap.clock());
            case Play play ->
                "%s across, %s along".formatted(play.radial().word(), play.end().word());
            case TrialPad pad ->
                "%s with %s mm, %s mm opposite".formatted(pad.verdict().word(), pad.stackMm(), pad.oppositeGapMm());
            case TrialShim shim ->
                "%s mm, with a shim of %s mm %s mm".formatted(shim.withoutMm(), shim.shimMm(), shim.withMm());
            case Pin pin -> pin.inWords();
            case Says says -> says.word();
        };
    }

    /** To five figures: a weight typed in grams is kept in newtons to the last digit, and nobody wants to read that. */
    private static String shortened(double value) {
        BigDecimal figures = new BigDecimal(value, new MathContext(5)).stripTrailingZeros();
        return figures.scale() < 0 ? figures.setScale(0).toPlainString() : figures.toPlainString();
    }

    /** A number with its unit; without a u the shop's figure for the instrument stands in. */
    record Amount(double value, Unit unit, @Nullable Double u) implements Observed {
        public Amount {
            requireFinite(value);
            requireUncertainty(u);
        }

        public static Amount mm(double value) {
            return new Amount(value, Unit.MILLIMETRE, null);
        }

        public static Amount mm(double value, double u) {
            return new Amount(value, Unit.MILLIMETRE, u);
        }
    }

    /** The worst gap under a flat disc, and at which clock position: 12 is away from the hinge. */
    record RimGap(double gapMm, @Nullable Double u, double clock) implements Observed {
        public RimGap {
            requireFinite(gapMm);
            requireFinite(clock);
            requireUncertainty(u);
        }
    }

    /** How a key fits its rod, felt with the fingers. */
    record Play(PlayGrade radial, PlayGrade end) implements Observed {}

    /**
     * A dry stack of known thickness in the cup, the key let down lightly on the light.
     *
     * @param stackMm card, pad or shims: all that lies between cup floor and hole rim
     * @param verdict where it touched first
     * @param oppositeGapMm feeler on the other side; 0 when level
     */
    record TrialPad(
            double stackMm,
            TrialVerdict verdict,
            double oppositeGapMm,
            @Nullable Double u) implements Observed {
        public TrialPad {
            requireFinite(stackMm);
            requireFinite(oppositeGapMm);
            requireUncertainty(u);
        }
    }

    /**
     * A shim of known thickness laid at the key foot, the height read without it and with it at the front edge.
     *
     * @param u of each height
     */
    record TrialShim(
            double shimMm,
            double withoutMm,
            double withMm,
            @Nullable Double u) implements Observed {
        public TrialShim {
            requireFinite(shimMm);
            requireFinite(withoutMm);
            requireFinite(withMm);
            requireUncertainty(u);
        }
    }

    /**
     * Something about the metal at a free spot: a dent, a crack, old solder.
     *
     * @param atMm along the bore from the small end of the neck
     * @param angleDeg round it from the front, positive to the player's right
     * @param sizeMm its greatest length
     * @param clock where it sits on a ring, 12 away from the hinge; null when that means nothing
     */
    record Pin(
            PinSort sort,
            double atMm,
            double angleDeg,
            double sizeMm,
            @Nullable Double clock,
            PinAccess access,
            PinChoice choice)
            implements Observed {
        public Pin {
            requireFinite(atMm);
            requireFinite(angleDeg);
            requireFinite(sizeMm);
        }

        @Override
        public String inWords() {
            String where = clock == null ? "" : " at %s o'clock".formatted(clock);
            return "%s of %s mm%s, %s: %s".formatted(sort.word(), sizeMm, where, access.word(), choice.word());
        }
    }

    /** A word or a stamped number. */
    record Says(String word) implements Observed {}

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a reading must be a number, got " + value);
        }
    }

    private static void requireUncertainty(@Nullable Double u) {
        if (u != null && !(u >= 0 && Double.isFinite(u))) {
            throw new IllegalArgumentException("an uncertainty is 0 or more, got " + u);
        }
    }
}
