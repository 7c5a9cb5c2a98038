package hornwright.bench.plan.measured;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.NeckPoint;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a stage of the work leaves as it was (bench judgement): a key without play is not fitted, a rim that is level or
 * left so is not levelled, and what was decided to stay is not made anew. Work reported on a thing outranks all of that.
 */
final class Untouched {
    private static final String PAD = "pad.";

    private final Keywork keywork;
    private final Set<String> fittingKeys = new HashSet<>();
    private final Set<String> leftHoles = new HashSet<>();
    private final Set<String> kept = new HashSet<>();

    Untouched(Keywork keywork, List<Reading> readings, List<WorkDone> done, List<Decision> decisions, ShopRules rules) {
        this.keywork = keywork;
        Set<String> level = new HashSet<>();
        Set<String> chosen = new HashSet<>();
        for (Reading reading : readings) {
            switch (reading.observed()) {
                case Observed.Play play -> mark(fittingKeys, reading.of(), fits(play));
                case Observed.RimGap gap -> mark(level, reading.of(), gap.gapMm() <= rules.value("rim.accept_mm"));
                case Observed.Says says
                when isChoice(reading) -> {
                    chosen.add(reading.of());
                    mark(leftHoles, reading.of(), says.word().equals(RimChoice.LEAVE.word()));
                }
                default -> {}
            }
        }
        level.removeAll(chosen);
        leftHoles.addAll(level);
        readings.stream().filter(Untouched::tookMetalOff).map(Reading::of).forEach(leftHoles::remove);
        done.forEach(this::worked);
        for (Decision decision : decisions) {
            if (decision instanceof Decision.Treat treat) {
                mark(kept, treat.place(), treat.treatment() == Treatment.KEEP);
            }
        }
    }

    /** Whether what this reading says cannot have been changed by this stage. */
    boolean by(Stage stage, Reading reading) {
        ReadingKind kind = reading.kind();
        if (kind == ReadingKind.LEAK_SITE && !reading.of().startsWith(PAD)) {
            return stage != Stage.BODY_STRAIGHT;
        }
        return switch (stage) {
            case BODY_STRAIGHT ->
                kind == ReadingKind.NECK
                        && NeckPoint.at(reading.point())
                                .filter(point -> !point.isOfTheNeck())
                                .isPresent();
            case SPRINGS_SOUND ->
                all(kept, keys(reading).stream().map(key -> "spring." + key).toList());
            case KEYS_FITTED -> all(fittingKeys, keys(reading));
            case HOLES_LEVEL -> all(leftHoles, holes(reading));
            case CORKED -> kind == ReadingKind.THICKNESS ? kept.contains(reading.of()) : all(kept, stops(reading));
            case PADDED ->
                all(kept, holes(reading).stream().map(hole -> PAD + hole).toList());
            default -> false;
        };
    }

    private void worked(WorkDone work) {
        if (work.kind() == WorkKind.KEY_FITTED) {
            fittingKeys.remove(work.of());
        }
        if (work.kind() == WorkKind.HOLE_LEVELLED) {
            leftHoles.remove(work.of());
        }
    }

    private List<String> keys(Reading reading) {
        String of = reading.of();
        if (keywork.links().contains(of)) {
            Link link = keywork.links().get(of);
            return List.of(link.driver(), link.follower());
        }
        return keywork.keys().contains(of)
                ? List.of(of)
                : cups(reading).stream().map(Cup::key).toList();
    }

    private List<String> holes(Reading reading) {
        return cups(reading).stream().map(Cup::hole).toList();
    }

    /** The cup a reading is about, by itself, its hole or its pad. */
    private List<Cup> cups(Reading reading) {
        String of = reading.of();
        return keywork.cups()
                .where(cup -> cup.id().equals(of) || cup.hole().equals(of) || (PAD + cup.hole()).equals(of));
    }

    /** The places of cork and felt a height hangs on. */
    private List<String> stops(Reading reading) {
        List<String> places = new ArrayList<>();
        for (String id : keys(reading)) {
            Key key = keywork.keys().get(id);
            key.stops().stream()
                    .flatMap(stop -> stop.layers().stream())
                    .map(Layer::place)
                    .forEach(places::add);
        }
        return keywork.links().contains(reading.of()) ? List.of() : places;
    }

    private static boolean all(Set<String> untouched, List<String> things) {
        return !things.isEmpty() && untouched.containsAll(things);
    }

    private static void mark(Set<String> set, String thing, boolean in) {
        if (in) {
            set.add(thing);
        } else {
            set.remove(thing);
        }
    }

    private static boolean fits(Observed.Play play) {
        return play.radial() == PlayGrade.NONE && play.end() == PlayGrade.NONE;
    }

    private static boolean isChoice(Reading reading) {
        return reading.kind() == ReadingKind.RIM_CHECK && reading.point().equals(RimChoice.POINT);
    }

    private static boolean tookMetalOff(Reading reading) {
        return reading.kind() == ReadingKind.METAL_OFF
                && reading.observed() instanceof Observed.Amount off
                && off.value() > 0;
    }
}
