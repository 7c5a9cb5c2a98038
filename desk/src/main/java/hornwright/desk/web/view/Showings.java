package hornwright.desk.web.view;

import hornwright.bench.horn.Place;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.steps.StepState;
import hornwright.bench.survey.Originality;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What each layer shows of a place: a material, and a state with icon, word and colour. */
public final class Showings {
    private final OnBench bench;
    private final Map<String, StepState> worst = new HashMap<>();

    /** The material in words, "" when not known. */
    public record Shown(String material, State state) {}

    public Showings(OnBench bench) {
        this.bench = bench;
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
