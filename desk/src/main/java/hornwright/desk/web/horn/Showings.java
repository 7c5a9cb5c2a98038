package hornwright.desk.web.horn;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.feel.FeelAnswer;
import hornwright.bench.seal.LeakSite;
import hornwright.bench.seal.LeakSites;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.steps.StepState;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** What each layer shows of a place: a material, and a state with icon, word and colour. */
public final class Showings {
    private static final State NOTHING = new State("as-built", "");

    private final OnBench bench;
    private final Later later;
    private final Map<String, StepState> worst = new HashMap<>();
    private final Map<Layer, NumberLayer> numbers = new EnumMap<>(Layer.class);
    private final ById<LeakSite> sites;
    private @Nullable SheetAsked leaks;

    /** The material in words, "" when not known. */
    public record Shown(String material, State state) {}

    /** What is reckoned only for the layer that shows it: forces at the touches, readings that still count. */
    public record Later(Supplier<FeelAnswer> feel, Supplier<SheetAsked> readings) {}

    public Showings(OnBench bench, Later later) {
        this.bench = bench;
        this.later = later;
        this.sites = LeakSites.of(bench.keywork());
        for (PlannedStep step : bench.plan().order()) {
            worst.merge(step.step().of(), step.state(), Showings::worse);
        }
    }

    public Shown of(Layer layer, Place place) {
        Optional<PlannedPlace> planned = bench.planned(place);
        return switch (layer) {
            case AS_BUILT -> asBuilt(place, planned);
            case FOUND -> found(planned.map(PlannedPlace::found).orElse(null));
            case PLANNED -> planned.map(Showings::planned).orElse(new Shown("", new State("missing", "no plan")));
            case DONE -> done(place, planned);
            case ORIGIN -> origin(planned.map(PlannedPlace::found).orElse(null));
            case LEAK -> new Shown("", leak(place));
            case SIZE, HEIGHT, FORCE ->
                new Shown("", new State("as-built", numbers(layer).inWords(place)));
        };
    }

    /** The numbers of a layer that shows numbers. */
    public NumberLayer numbers(Layer layer) {
        return numbers.computeIfAbsent(layer, asked -> switch (asked) {
            case HEIGHT -> NumberLayer.heights(bench);
            case FORCE -> NumberLayer.forces(bench, later.feel().get());
            default -> NumberLayer.sizes(bench);
        });
    }

    private static Shown origin(@Nullable Found found) {
        String material = found == null || found.material() == null ? "" : found.material();
        Originality origin = found == null ? Originality.UNKNOWN : found.originality();
        return new Shown(
                material,
                new State(
                        switch (origin) {
                            case ORIGINAL -> "done";
                            case LATER -> "planned";
                            case MISSING -> "contested";
                            case UNKNOWN -> "missing";
                        },
                        origin.word()));
    }

    /** What was last tried there since it could have changed. */
    private State leak(Place place) {
        if (!sites.contains(place.id())) {
            return NOTHING;
        }
        if (leaks == null) {
            leaks = later.readings().get();
        }
        String word = leaks.word(ReadingKind.LEAK_SITE, place.id(), "");
        return switch (word) {
            case "seals" -> new State("done", word);
            case "leaks" -> new State("stale", word);
            default -> new State("missing", "not tried");
        };
    }

    private static Shown asBuilt(Place place, Optional<PlannedPlace> planned) {
        String material = planned.map(known -> known.asBuilt().material())
                .orElse(place.asBuilt().material());
        String says = planned.map(known -> known.asBuilt().says()).orElse("pattern");
        return material == null
                ? new Shown("", new State("missing", "not known"))
                : new Shown(material, new State("as-built", says));
    }

    private static Shown found(@Nullable Found found) {
        if (found == null) {
            return new Shown("", new State("missing", "not looked at"));
        }
        String material = found.material() == null ? "" : found.material();
        if (found.originality() == Originality.MISSING || found.material() == null) {
            return new Shown(material, new State("missing", found.condition().word()));
        }
        return new Shown(
                material, new State("found", found.condition().word() + (found.byGroup() ? ", by its group" : "")));
    }

    private static Shown planned(PlannedPlace planned) {
        String material = planned.material() == null ? "" : planned.material();
        return new Shown(material, State.of(planned));
    }

    private Shown done(Place place, Optional<PlannedPlace> planned) {
        String material = planned.map(PlannedPlace::material).orElse("");
        StepState state = worst.get(place.belongsTo().id());
        return new Shown(
                material == null ? "" : material, state == null ? new State("missing", "no step") : State.of(state));
    }

    /** Recheck outranks open, open outranks done. */
    private static StepState worse(StepState one, StepState other) {
        return rank(one) >= rank(other) ? one : other;
    }

    private static int rank(StepState state) {
        return switch (state) {
            case StepState.Recheck recheck -> 3;
            case StepState.Ready ready -> 2;
            case StepState.Waiting waiting -> 1;
            case StepState.Good good -> 0;
        };
    }
}
