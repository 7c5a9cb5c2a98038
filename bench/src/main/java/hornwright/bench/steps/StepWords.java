package hornwright.bench.steps;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.RimKind;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import hornwright.bench.survey.Treatment;
import java.util.Optional;
import java.util.stream.Stream;

/** Says each step as this horn needs it: what stays is looked after, what goes is made new, a rim is treated as chosen. */
final class StepWords {
    private final StepsAsked asked;

    StepWords(StepsAsked asked) {
        this.asked = asked;
    }

    String spring(Key key) {
        Treatment treatment = treatment("spring." + key.id());
        String name = key.name().display();
        return renewed(treatment) && asked.treatments().containsKey("spring." + key.id())
                ? "Fit a new spring to %s, of the strength the old one had".formatted(name)
                : "See that the %s spring is sound".formatted(name);
    }

    String contact(String place) {
        String name = asked.keywork().places().find(place).map(Place::display).orElse(place);
        return switch (treatment(place)) {
            case KEEP -> "Keep %s: see that it is sound and holds".formatted(name);
            case CLEAN -> "Clean %s and see that it holds".formatted(name);
            case REFIT -> "Stick %s on again".formatted(name);
            case DECIDE -> "Look at %s and decide; if new, cut it full".formatted(name);
            case REPLACE_LIKE, SUBSTITUTE, MAKE -> "Cut and stick %s, left full".formatted(name);
        };
    }

    String pad(Cup cup) {
        String name = asked.keywork().nameOf(cup).display();
        String place = asked.keywork().placesOf(cup).stream()
                .filter(at -> at.kind() == PlaceKind.PAD)
                .map(Place::id)
                .findFirst()
                .orElse("");
        return switch (treatment(place)) {
            case KEEP, CLEAN, REFIT -> "Seat the %s pad that stays".formatted(name);
            case DECIDE, REPLACE_LIKE, SUBSTITUTE, MAKE -> "Set and float the %s pad".formatted(name);
        };
    }

    String rim(Cup cup) {
        String name = asked.keywork().nameOf(cup).display();
        ToneHole hole = asked.keywork().holeOf(cup);
        if (hole.rim() == RimKind.PIP) {
            return "See that the %s pip is sound and its rim flat".formatted(name);
        }
        return chosen(hole.id())
                .map(choice -> switch (choice) {
                    case LEAVE -> "Leave the %s rim as it is; the pad is floated over it".formatted(name);
                    case LIFT -> "Lift the %s rim from inside, in small steps".formatted(name);
                    case FILE -> "Level the %s rim with the file; log what comes off".formatted(name);
                })
                .orElse("See how level the %s rim is; what it needs is chosen on the sheet of tone holes"
                        .formatted(name));
    }

    private Optional<RimChoice> chosen(String hole) {
        return asked.readings().stream()
                .filter(reading -> reading.kind() == ReadingKind.RIM_CHECK
                        && reading.of().equals(hole)
                        && reading.point().equals(RimChoice.POINT))
                .flatMap(reading -> reading.observed() instanceof Observed.Says says
                        ? RimChoice.of(says.word()).stream()
                        : Stream.empty())
                .reduce((first, second) -> second);
    }

    private Treatment treatment(String place) {
        return asked.treatments().getOrDefault(place, Treatment.REPLACE_LIKE);
    }

    private static boolean renewed(Treatment treatment) {
        return switch (treatment) {
            case REPLACE_LIKE, SUBSTITUTE, MAKE -> true;
            case KEEP, CLEAN, REFIT, DECIDE -> false;
        };
    }
}
