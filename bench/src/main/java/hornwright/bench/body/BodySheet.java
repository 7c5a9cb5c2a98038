package hornwright.bench.body;

import hornwright.bench.plan.Reasons;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.Comparator;
import java.util.List;

/** The pins of one horn, from the neck down. */
public final class BodySheet {
    private BodySheet() {}

    public static SheetAnswer of(SheetAsked ask) {
        List<SheetLine> lines =
                pins(ask).stream().map(reading -> line(ask, reading)).toList();
        return new SheetAnswer(summary(lines), lines, List.of(), new Reasons().table());
    }

    /** Readings of pins in the order of the tube. */
    public static List<Reading> pins(SheetAsked ask) {
        return ask.measured()
                .all(ReadingKind.PIN)
                .filter(reading -> reading.observed() instanceof Observed.Pin)
                .sorted(Comparator.comparingDouble(reading -> ((Observed.Pin) reading.observed()).atMm()))
                .toList();
    }

    private static SheetLine line(SheetAsked ask, Reading reading) {
        Observed.Pin pin = (Observed.Pin) reading.observed();
        boolean cannot = pin.choice() == PinChoice.MEND && pin.access() == PinAccess.NONE;
        Verdict verdict = cannot
                ? Verdict.STOP
                : switch (pin.choice()) {
                    case LOOK -> Verdict.UNTRIED;
                    case LEAVE, WATCH -> Verdict.MAY_STAY;
                    case MEND -> Verdict.ACT;
                };
        return new SheetLine(
                reading.of(),
                verdict,
                cannot ? "it is not within reach: leave it, or say how it is reached" : says(pin),
                List.of(),
                new PinRemedies(ask.use()).of(pin));
    }

    private static String says(Observed.Pin pin) {
        if (pin.sort() == PinSort.DENT && pin.choice() == PinChoice.MEND) {
            return "before posts, fit and rims: raising it moves what stands near";
        }
        if (pin.sort() == PinSort.LIFTED_RING && pin.choice() != PinChoice.MEND) {
            return "try it for air before it is left";
        }
        return pin.choice() == PinChoice.LEAVE || pin.choice() == PinChoice.WATCH ? "goes into the report" : "";
    }

    private static String summary(List<SheetLine> lines) {
        if (lines.isEmpty()) {
            return "No pin set yet.";
        }
        long open =
                lines.stream().filter(line -> line.verdict() == Verdict.UNTRIED).count();
        String pins = lines.size() == 1 ? "One pin" : lines.size() + " pins";
        return open == 0 ? pins + ", all settled." : pins + ", " + open + " to be decided.";
    }
}
