package hornwright.bench.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.survey.PlayTest;
import hornwright.engines.air.Air;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Mouthpiece and bore as a play test tells them. */
final class FittedNumbers {
    /** Fewer notes say too little about six unknowns. */
    private static final int LEAST_NOTES = 8;

    private final SoundQuestion ask;
    private final Reasons reasons;

    FittedNumbers(SoundQuestion ask, Reasons reasons) {
        this.ask = ask;
        this.reasons = reasons;
    }

    @Nullable
    BoreFit fit(
            Air air, HornShape shape, Map<String, Double> heightU, PlayTest test, Map<String, PlannedNumber> heard) {
        if (heard.size() < LEAST_NOTES) {
            return null;
        }
        List<Fingering> fingerings = ask.keywork().fingerings().list();
        double[] hz = new double[fingerings.size()];
        double squares = 0;
        for (int i = 0; i < hz.length; i++) {
            PlannedNumber note = heard.get(fingerings.get(i).id());
            double place = WrittenNote.place(
                    ask.keywork(), fingerings.get(i), test.conditions().referenceHz());
            hz[i] = note == null ? Double.NaN : place * Math.pow(2, note.value() / 1200);
            squares += note == null ? 0 : note.u() * note.u() / heard.size();
        }
        double model = ask.rules().value("sound.model_cents");
        return BoreFit.of(ask.keywork(), air, shape, heightU, hz, Math.sqrt(squares + model * model));
    }

    SoundAnswer.Fitted numbers(BoreFit fit, PlannedNumber common) {
        List<Because.Input> inputs = List.of(
                Because.Input.of("all notes share", common),
                Because.Input.of("what the model does not know", reasons.rule(ask.rules(), "sound.model_cents")));
        String from = "fitted to every note of the play test; before it the pattern's, give or take ";
        return new SoundAnswer.Fitted(
                number("volume", from + "15 %", "cm³", fit.volumeMm3() / 1e3, fit.volumeU() / 1e3, inputs),
                share("neck", fit, 0, from, inputs),
                share("middle", fit, 1, from, inputs),
                share("bell", fit, 2, from, inputs),
                number("unexplained", "root mean square of what the fit leaves", "cents", fit.leftCents(), 0, inputs));
    }

    private PlannedNumber share(String where, BoreFit fit, int i, String from, List<Because.Input> inputs) {
        return number(
                where,
                from + "1 %",
                "%",
                100 * fit.bore().get(i),
                100 * fit.boreU().get(i),
                inputs);
    }

    private PlannedNumber number(
            String id, String rule, String unit, double value, double u, List<Because.Input> inputs) {
        PlannedNumber told = reasons.derive("sound/fit/" + id, rule, unit, in -> value, inputs);
        return new PlannedNumber(value, unit, u, told.because(), null, null, null);
    }
}
