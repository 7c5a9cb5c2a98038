package hornwright.bench.steps;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A step for every pin set on the tube, before the step that deals with all of its sort. */
final class BodySteps {
    private final StepsAsked asked;

    BodySteps(StepsAsked asked) {
        this.asked = asked;
    }

    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (Reading reading : asked.readings()) {
            if (reading.observed() instanceof Observed.Pin pin) {
                steps.add(step(reading.of(), pin));
            }
        }
        return steps;
    }

    /** Pins whose mending belongs to this step of the whole horn; nothing rests on what is left as it is. */
    List<String> before(String step) {
        return pins().filter(reading -> reading.observed() instanceof Observed.Pin pin
                        && pin.choice() != PinChoice.LEAVE
                        && pin.choice() != PinChoice.WATCH
                        && belongsTo(pin.sort()).equals(step))
                .map(reading -> id(reading.of()))
                .toList();
    }

    private Step step(String pin, Observed.Pin found) {
        boolean stone = found.sort() == PinSort.MISSING_STONE;
        return new Step(
                id(pin),
                Stage.BODY_STRAIGHT,
                words(found),
                pin,
                List.of(),
                List.of(stone || found.sort() == PinSort.CORROSION ? "posts" : "pre-clean"));
    }

    private String words(Observed.Pin pin) {
        String what = "the %s on the %s, %s mm"
                .formatted(
                        pin.sort().word(),
                        asked.keywork().tube().partAt(pin.atMm()).word(),
                        plain(pin.sizeMm()));
        return switch (pin.choice()) {
            case MEND -> mend(pin.sort()) + " " + what;
            case LEAVE, WATCH -> left(pin.choice()) + " " + what;
            case LOOK -> "Decide about " + what;
        };
    }

    private static String mend(PinSort sort) {
        return switch (sort) {
            case DENT -> "Raise";
            case CRACK -> "Close and secure";
            case CORROSION -> "Stop";
            case OLD_SOLDER -> "Take off and make good";
            case LIFTED_RING -> "Solder down";
            case MISSING_STONE -> "Replace";
        };
    }

    private static String belongsTo(PinSort sort) {
        return switch (sort) {
            case CRACK, OLD_SOLDER, LIFTED_RING -> "solder";
            case DENT -> "dents";
            case CORROSION, MISSING_STONE -> "clean";
        };
    }

    private Stream<Reading> pins() {
        return asked.readings().stream().filter(reading -> reading.observed() instanceof Observed.Pin);
    }

    private static String id(String pin) {
        return "body." + pin.replaceFirst("^pin\\.", "");
    }

    private static String plain(double value) {
        return value == Math.rint(value)
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    /** What is left as it is goes into the report, so that nobody takes it for an oversight. */
    private static String left(PinChoice choice) {
        return choice == PinChoice.WATCH ? "Leave, measure and watch" : "Leave, and write into the report,";
    }
}
