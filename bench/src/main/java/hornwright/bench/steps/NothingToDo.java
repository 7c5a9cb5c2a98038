package hornwright.bench.steps;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import hornwright.bench.survey.Treatment;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Where somebody looked and found nothing to do. What nobody looked at is still to be done. */
final class NothingToDo {
    private final StepsAsked asked;

    NothingToDo(StepsAsked asked) {
        this.asked = asked;
    }

    /** A key felt without play, and no clearance of it measured over what may stay. */
    boolean toFit(Key key) {
        boolean tight = last(ReadingKind.PLAY, key.id())
                .filter(reading -> reading.observed() instanceof Observed.Play(PlayGrade radial, PlayGrade end)
                        && radial == PlayGrade.NONE
                        && end == PlayGrade.NONE)
                .isPresent();
        return tight && of(ReadingKind.HINGE, key.id()).noneMatch(this::isWorn);
    }

    /** A rim read within what may stay, of which no metal came off and for which nothing was chosen. */
    boolean toLevel(Cup cup) {
        boolean level = last(ReadingKind.RIM_GAP, cup.hole())
                .filter(reading -> reading.observed() instanceof Observed.RimGap gap
                        && gap.gapMm() <= asked.rules().value("rim.accept_mm"))
                .isPresent();
        return level
                && !ringLeaks(cup)
                && of(ReadingKind.RIM_CHECK, cup.hole())
                        .noneMatch(reading -> reading.point().equals(RimChoice.POINT))
                && of(ReadingKind.METAL_OFF, cup.hole()).noneMatch(NothingToDo::isSome);
    }

    /** A spring found sound that stays. */
    boolean toSpring(Key key) {
        return asked.treatments().get("spring." + key.id()) == Treatment.KEEP;
    }

    boolean ringLeaks(Cup cup) {
        return of(ReadingKind.RIM_CHECK, cup.hole()).anyMatch(says("leaks"));
    }

    private boolean isWorn(Reading reading) {
        String limit = switch (reading.point()) {
            case "across the rod" -> "fit.accept_mm";
            case "along the rod" -> "fit.end-accept_mm";
            default -> "";
        };
        return !limit.isEmpty()
                && reading.observed() instanceof Observed.Amount amount
                && amount.value() > asked.rules().value(limit);
    }

    private static boolean isSome(Reading reading) {
        return reading.observed() instanceof Observed.Amount amount && amount.value() > 0;
    }

    private static Predicate<Reading> says(String word) {
        return reading ->
                reading.observed() instanceof Observed.Says says && says.word().equals(word);
    }

    private Stream<Reading> of(ReadingKind kind, String of) {
        return asked.readings().stream()
                .filter(reading -> reading.kind() == kind && reading.of().equals(of));
    }

    private Optional<Reading> last(ReadingKind kind, String of) {
        return of(kind, of).reduce((first, second) -> second);
    }
}
