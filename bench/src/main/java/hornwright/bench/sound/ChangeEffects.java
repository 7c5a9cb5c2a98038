package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.sound.HeightOffer.Change;
import hornwright.bench.sound.HeightOffer.Effect;
import hornwright.engines.air.Air;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What changes of height do to the notes of a horn, one at a time and together, by the air column rather than by straight lines. */
final class ChangeEffects {
    private static final double TOLD = 0.5;

    private final Keywork keywork;
    private final Air air;
    private final HornShape shape;
    private final List<Fingering> notes;
    private final double[] cents;
    private final double[] frequencies;

    /**
     * @param shape the horn before any of the changes
     * @param notes what was heard
     * @param cents of those notes on that horn, the common part taken off
     * @param frequencies of that horn, by fingering of the keywork
     */
    ChangeEffects(
            Keywork keywork, Air air, HornShape shape, List<Fingering> notes, double[] cents, double[] frequencies) {
        this.keywork = keywork;
        this.air = air;
        this.shape = shape;
        this.notes = notes;
        this.cents = cents;
        this.frequencies = frequencies;
    }

    /** Cents of every note with these cups at these heights. */
    double[] after(Map<Cup, Double> to) {
        double[] now = HeightEffects.frequencies(keywork, air, with(shape, to));
        double[] after = new double[cents.length];
        for (int i = 0; i < after.length; i++) {
            int at = keywork.fingerings().list().indexOf(notes.get(i));
            double moved = HeightEffects.cents(frequencies[at], now[at]);
            after[i] = cents[i] + (Double.isFinite(moved) ? moved : 0);
        }
        return after;
    }

    /** Each change with the notes it moves or spoils. */
    List<Change> of(Map<Cup, Double> to, double band) {
        double[] all = after(to);
        List<Change> changes = new ArrayList<>();
        to.forEach((cup, mm) -> {
            double[] alone = to.size() == 1 ? all : after(Map.of(cup, mm));
            changes.add(new Change(cup.id(), shape.frontMm(cup), mm, effects(alone, all, band)));
        });
        return changes;
    }

    private List<Effect> effects(double[] alone, double[] all, double band) {
        List<Effect> effects = new ArrayList<>();
        for (int i = 0; i < cents.length; i++) {
            Harm harm = Harm.of(band, cents[i], alone[i], all[i]);
            if (Math.abs(alone[i] - cents[i]) >= TOLD || harm != Harm.NONE) {
                effects.add(new Effect(notes.get(i).id(), cents[i], alone[i], all[i], harm));
            }
        }
        return effects;
    }

    static HornShape with(HornShape shape, Map<Cup, Double> changes) {
        Map<String, Double> heights = new HashMap<>(shape.frontMm());
        changes.forEach((cup, mm) -> heights.put(cup.id(), mm));
        return shape.withHeights(heights);
    }
}
