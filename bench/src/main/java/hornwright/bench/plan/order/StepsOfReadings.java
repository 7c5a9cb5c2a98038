package hornwright.bench.plan.order;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.NeckCheck;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.RimChoice;
import java.util.Optional;
import java.util.stream.Stream;

/** Which step was made to suit a reading, or is told by it how it came out. */
final class StepsOfReadings {
    private final Keywork keywork;
    private final WorkGraph graph;

    StepsOfReadings(Keywork keywork, WorkGraph graph) {
        this.keywork = keywork;
        this.graph = graph;
    }

    /** The step, or nothing when no step of this horn hangs on such a reading. */
    Optional<String> of(Reading reading) {
        String of = reading.of();
        return switch (reading.kind()) {
            case CUP_INSIDE, CUP_DEPTH -> known(cup(of).map(cup -> "pad." + cup.hole()));
            case HOLE -> known(Stream.of("arm." + of));
            case AXIS_TO_CENTRE, TRIAL_PAD -> known(cup(of).map(cup -> "arm." + cup.hole()));
            case AXIS_TO_FOOT, TRIAL_SHIM -> known(feet(of));
            case FRONT_HEIGHT, CENTRE_HEIGHT -> known(cup(of).map(cup -> "height." + cup.key()));
            case FOOT_CLEARANCE -> known(Stream.of("height." + of));
            case THICKNESS -> known(Stream.concat(Stream.of("cork." + of), corkOfLink(of)));
            case METAL_OFF -> known(Stream.of("arm." + of));
            case RIM_GAP -> known(Stream.of("level." + of));
            case RIM_CHECK -> known(rim(reading));
            case TOUCH_WEIGHT -> known(Stream.of("touch"));
            case PLAY, HINGE -> known(Stream.of("fit." + of));
            case LINK_SPACE -> known(Stream.of("cork." + of, regulate(of)));
            case CLEARANCE, CONTACT_GAP -> known(Stream.of(regulate(of)));
            case LINKED_GAP -> known(Stream.concat(lastWay(reading), cup(of).map(cup -> "pad." + cup.hole())));
            case LOST_MOTION -> known(drivenBy(of));
            case NECK -> known(Stream.of("neck"));
            case NECK_CHECK -> known(Stream.of(reading.point().equals(NeckCheck.TURNED.point()) ? "octave" : "neck"));
            case LEAK_SITE -> known(site(of));
            case LEAK -> known(Stream.of("second.pads"));
            case PIN -> known(Stream.of("body." + of.replaceFirst("^pin\\.", "")));
            case ADHESIVE_FOUND -> known(Stream.of("pre-clean"));
            case FINISH_SIGN -> known(Stream.of("clean"));
            case TUNING, STAMP, SERIAL, SWITCH, CLOCK_STARTED, TIME_SPENT -> Optional.empty();
        };
    }

    private static Stream<String> rim(Reading reading) {
        boolean choice = reading.point().equals(RimChoice.POINT);
        Stream<String> ring = choice ? Stream.of() : Stream.of("ring." + reading.of());
        return Stream.concat(ring, Stream.of("level." + reading.of()));
    }

    private Stream<Cup> cup(String id) {
        return keywork.cups().find(id).stream();
    }

    /** A foot is cut to its key's lengths; without one the height is set some other way. */
    private Stream<String> feet(String key) {
        Stream<String> corks = keywork.keys().find(key).stream()
                .flatMap(found -> found.stops().stream())
                .flatMap(stop -> stop.layers().stream())
                .map(Layer::place)
                .map(place -> "cork." + place);
        return Stream.concat(corks, Stream.of("height." + key));
    }

    private Stream<String> corkOfLink(String place) {
        return keywork.links().stream()
                .filter(link ->
                        link.layers().stream().anyMatch(layer -> layer.place().equals(place)))
                .map(link -> "cork." + link.id());
    }

    /** The contact that brings the pressed finger to the cup felt under. */
    private Stream<String> lastWay(Reading reading) {
        String key = cup(reading.of()).map(Cup::key).findFirst().orElse("");
        String pressed = reading.point().replaceFirst("^pressing ", "");
        Stream<Link> ways =
                keywork.links().stream().filter(link -> link.follower().equals(key));
        return ways.sorted((a, b) ->
                        Boolean.compare(b.driver().equals(pressed), a.driver().equals(pressed)))
                .map(link -> regulate(link.id()));
    }

    private Stream<String> drivenBy(String key) {
        Stream<String> links = keywork.keys().find(key).stream()
                .flatMap((Key found) -> keywork.linksFrom(found).stream())
                .map(link -> regulate(link.id()));
        return Stream.concat(links, Stream.of("touch"));
    }

    /** A pad is told by its own site, the neck by what is on it, the rest by what was soldered. */
    private Stream<String> site(String place) {
        if (graph.contains(place)) {
            return Stream.of(place);
        }
        boolean neck = keywork.places().find(place).stream().anyMatch(site -> switch (site.kind()) {
            case TENON, NECK_CORK, PIP, NECK_BRACE -> true;
            default -> false;
        });
        return Stream.of(neck ? "neck" : "solder");
    }

    private Optional<String> known(Stream<String> steps) {
        return steps.filter(graph::contains).findFirst();
    }

    private static String regulate(String link) {
        return "regulate." + link.replaceFirst("^link\\.", "");
    }
}
