package hornwright.bench.plan.pads;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the pad of one cup depends on, and nothing else; equal questions have equal answers.
 *
 * @param insides cup inside diameters
 * @param decidedMm thickness a person settled on
 */
public record PadQuestion(
        Keywork keywork,
        Cup cup,
        List<Reading> insides,
        List<Reading> depths,
        List<Reading> holes,
        List<Reading> arms,
        List<Reading> trials,
        List<Reading> rimGaps,
        List<Reading> plays,
        List<Reading> hinges,
        @Nullable Double decidedMm,
        Stock stock,
        ShopRules rules) {
    public PadQuestion {
        insides = List.copyOf(insides);
        depths = List.copyOf(depths);
        holes = List.copyOf(holes);
        arms = List.copyOf(arms);
        trials = List.copyOf(trials);
        rimGaps = List.copyOf(rimGaps);
        plays = List.copyOf(plays);
        hinges = List.copyOf(hinges);
    }

    public static PadQuestion of(
            Keywork keywork, Cup cup, Measurements measured, @Nullable Double decidedMm, Stock stock, ShopRules rules) {
        return new PadQuestion(
                keywork,
                cup,
                measured.of(ReadingKind.CUP_INSIDE, cup.id()),
                measured.of(ReadingKind.CUP_DEPTH, cup.id()),
                measured.of(ReadingKind.HOLE, cup.hole()),
                measured.of(ReadingKind.AXIS_TO_CENTRE, cup.id()),
                measured.of(ReadingKind.TRIAL_PAD, cup.id()),
                measured.of(ReadingKind.RIM_GAP, cup.hole()),
                measured.of(ReadingKind.PLAY, cup.key()),
                measured.of(ReadingKind.HINGE, cup.key()),
                decidedMm,
                stock,
                rules);
    }

    ToneHole hole() {
        return keywork.holeOf(cup);
    }

    /** The words under which the rules file sizes of nobody's measuring. */
    String sizeClass() {
        if (hole().octaveVent()) {
            return "vent";
        }
        return hole().diameterMm() >= 15 ? "large" : "small";
    }

    /** The rule for the thinnest film under this pad. */
    String leastFilm() {
        return hole().octaveVent() ? "adhesive.small-least_mm" : "adhesive.least_mm";
    }

    String place() {
        return "pad." + cup.hole();
    }

    String display() {
        return keywork.nameOf(cup).display();
    }
}
