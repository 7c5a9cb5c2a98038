package hornwright.bench.plan.seat;

import hornwright.bench.plan.Advice;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.Chapter;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The closing of pads as a chapter of the plan: numbers at the place of each pad. */
public final class SeatNumbers {
    private SeatNumbers() {}

    /** The numbers alone. */
    public static Chapter numbers(List<SeatAnswer> pads, Map<String, String> placeByCup) {
        return chapter(pads, placeByCup, false);
    }

    /** With the remedies of those that may leak. */
    public static Chapter whole(List<SeatAnswer> pads, Map<String, String> placeByCup) {
        return chapter(pads, placeByCup, true);
    }

    private static Chapter chapter(List<SeatAnswer> pads, Map<String, String> placeByCup, boolean advised) {
        Map<String, Map<NumberName, PlannedNumber>> numbers = new LinkedHashMap<>();
        Map<String, List<Advice>> advice = new LinkedHashMap<>();
        Becauses becauses = Becauses.none();
        for (SeatAnswer pad : pads) {
            String place = placeByCup.get(pad.cup());
            if (place != null) {
                numbers.put(place, numbers(pad));
                becauses = becauses.and(pad.becauses());
                if (advised) {
                    advice.put(place, advice(pad));
                }
            }
        }
        return new Chapter("closing", numbers, advice, List.of(), becauses);
    }

    private static Map<NumberName, PlannedNumber> numbers(SeatAnswer pad) {
        Map<NumberName, PlannedNumber> numbers = new LinkedHashMap<>();
        numbers.put(NumberName.GAP_LEFT, pad.gap());
        numbers.put(NumberName.LEAK_LEFT, pad.leak());
        numbers.put(NumberName.LEAK_HOLE, pad.hole());
        numbers.put(NumberName.PAD_STIFFNESS, pad.stiffness());
        numbers.put(NumberName.SEALS_WITH, pad.seals());
        PlannedNumber touch = pad.atTouch();
        if (touch != null) {
            numbers.put(NumberName.SEALS_AT_TOUCH, touch);
        }
        PlannedNumber springs = pad.springs();
        if (springs != null) {
            numbers.put(NumberName.SPRINGS_HOLD, springs);
        }
        return numbers;
    }

    private static List<Advice> advice(SeatAnswer pad) {
        List<Advice> advice = new ArrayList<>();
        if (pad.compromiseOverMm() != null) {
            advice.add(ClassOfPad.compromise(pad.compromiseOverMm()));
        }
        pad.remedies().forEach(remedy -> advice.add(advice(remedy)));
        return advice;
    }

    private static Advice advice(SeatAnswer.Remedy remedy) {
        return new Advice(
                "%s (%s; %s).".formatted(remedy.words(), remedy.cost(), remedy.reversible()),
                remedy.cautions(),
                List.of());
    }
}
