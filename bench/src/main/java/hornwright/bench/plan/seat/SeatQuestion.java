package hornwright.bench.plan.seat;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rest;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.engines.linkage.Balance;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything the closing of one pad depends on.
 *
 * @param pad of which class it is, and why
 * @param springN force with which springs alone hold the pad shut; 0 for one that rests open
 */
public record SeatQuestion(
        Keywork keywork,
        Cup cup,
        List<Reading> holes,
        List<Reading> arms,
        List<Reading> rimGaps,
        List<Reading> plays,
        double springN,
        ClassOfPad pad,
        ShopRules rules) {
    public SeatQuestion {
        holes = List.copyOf(holes);
        arms = List.copyOf(arms);
        rimGaps = List.copyOf(rimGaps);
        plays = List.copyOf(plays);
    }

    /** One question for each cup of the horn, in the order of the keywork. */
    public static List<SeatQuestion> all(PlanInputs inputs) {
        Keywork keywork = inputs.keywork();
        Measurements measured = Measurements.of(inputs);
        double[] held =
                Balance.of(Action.asBuilt(keywork).mechanism()).atRest().cups().force();
        List<SeatQuestion> all = new ArrayList<>();
        for (int i = 0; i < held.length; i++) {
            Cup cup = keywork.cups().list().get(i);
            all.add(new SeatQuestion(
                    keywork,
                    cup,
                    measured.of(ReadingKind.HOLE, cup.hole()),
                    measured.of(ReadingKind.AXIS_TO_CENTRE, cup.id()),
                    measured.of(ReadingKind.RIM_GAP, cup.hole()),
                    measured.of(ReadingKind.PLAY, cup.key()),
                    cup.rest() == Rest.CLOSED ? held[i] : 0,
                    ClassOfPad.of(inputs.decisions(), cup.id()),
                    inputs.rules()));
        }
        return all;
    }

    String display() {
        return keywork.nameOf(cup).display();
    }
}
