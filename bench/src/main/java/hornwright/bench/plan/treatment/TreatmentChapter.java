package hornwright.bench.plan.treatment;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Built;
import hornwright.bench.plan.Found;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.GroupFinding;
import hornwright.bench.survey.Treatment;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The treatment of every place; adhesive and pad centres go with what they belong to. */
public final class TreatmentChapter {
    /** Everything the treatments depend on; equal questions have equal answers. */
    public record Question(
            Keywork keywork,
            List<Finding> findings,
            List<GroupFinding> groups,
            List<Decision> decisions,
            Map<String, AsBuiltAt> archive,
            AgreedUse use) {}

    private final Question ask;
    private final Findings findings;
    private final Map<String, Decision.Treat> decided = new LinkedHashMap<>();
    private final Map<String, PlaceTreatment> done = new LinkedHashMap<>();

    private TreatmentChapter(Question ask) {
        this.ask = ask;
        this.findings = new Findings(ask.keywork(), ask.findings(), ask.groups());
        for (Decision decision : ask.decisions()) {
            if (decision instanceof Decision.Treat treat) {
                decided.put(treat.place(), treat);
            }
        }
    }

    /** By place, in the order of the keywork. */
    public static Map<String, PlaceTreatment> of(Question ask) {
        TreatmentChapter chapter = new TreatmentChapter(ask);
        Map<String, PlaceTreatment> inOrder = new LinkedHashMap<>();
        ask.keywork().places().forEach(place -> inOrder.put(place.id(), chapter.at(place)));
        return Collections.unmodifiableMap(inOrder);
    }

    private PlaceTreatment at(Place place) {
        PlaceTreatment known = done.get(place.id());
        if (known != null) {
            return known;
        }
        Built built = BuiltAs.of(ask.keywork(), place, ask.archive());
        Found found = findings.found(place);
        Decision.Treat settled = decided.get(place.id());
        PlaceTreatment treated = settled == null
                ? treated(place, built, found, proposal(place, built, found))
                : new PlaceTreatment(
                        place.id(),
                        built,
                        found,
                        settled.treatment(),
                        "decided: " + settled.why(),
                        material(settled, built, found),
                        true);
        done.put(place.id(), treated);
        return treated;
    }

    private static PlaceTreatment treated(Place place, Built built, @Nullable Found found, Proposal proposal) {
        return new PlaceTreatment(
                place.id(), built, found, proposal.treatment(), proposal.why(), proposal.material(), false);
    }

    private static @Nullable String material(Decision.Treat settled, Built built, @Nullable Found found) {
        if (settled.material() != null) {
            return settled.material();
        }
        boolean stays = switch (settled.treatment()) {
            case KEEP, CLEAN, REFIT -> true;
            case REPLACE_LIKE, SUBSTITUTE, MAKE, DECIDE -> false;
        };
        return stays && found != null ? found.material() : built.material();
    }

    private Proposal proposal(Place place, Built built, @Nullable Found found) {
        return carrier(place)
                .map(carrier -> following(place, built, found, at(carrier)))
                .orElseGet(() -> Proposal.of(place.kind(), built, found, ask.use()));
    }

    /** What a place goes with: the cork above an adhesive, the pad of a centre or of a pad's adhesive. */
    private Optional<Place> carrier(Place place) {
        String above = place.beneath();
        if (above != null) {
            return ask.keywork().places().find(above);
        }
        boolean follows = switch (place.kind()) {
            case ADHESIVE, RESONATOR, RIVET, PAD_CENTRE -> place.belongsTo() instanceof Owner.OfCup;
            default -> false;
        };
        return follows
                ? ask.keywork().placesOf(place.belongsTo()).stream()
                        .filter(other -> other.kind() == PlaceKind.PAD)
                        .findFirst()
                : Optional.empty();
    }

    private Proposal following(Place place, Built built, @Nullable Found found, PlaceTreatment carrier) {
        String name = "goes with " + carrier.place();
        if (place.kind() == PlaceKind.ADHESIVE) {
            return switch (carrier.treatment()) {
                case KEEP, CLEAN ->
                    new Proposal(Treatment.KEEP, name, found == null ? built.material() : found.material());
                case DECIDE -> new Proposal(Treatment.DECIDE, name, built.material());
                case REFIT, REPLACE_LIKE, SUBSTITUTE, MAKE ->
                    new Proposal(Treatment.REPLACE_LIKE, name, built.material());
            };
        }
        if (!carrier.mayNeedNew()) {
            return new Proposal(Treatment.KEEP, name, found == null ? built.material() : found.material());
        }
        return onNewPad(place, built, found, name);
    }

    /** A sound centre of the kind built goes onto the new pad; what is gone or of another kind is made again. */
    private Proposal onNewPad(Place place, Built built, @Nullable Found found, String name) {
        Proposal own = Proposal.of(place.kind(), built, found, ask.use());
        boolean reusable = place.kind() != PlaceKind.PAD_CENTRE
                && (found == null || found.condition().fit() != Condition.Fit.SPENT);
        if (!reusable || own.treatment() == Treatment.REPLACE_LIKE) {
            return new Proposal(Treatment.REPLACE_LIKE, name + "; " + own.why(), built.material());
        }
        return own.treatment() == Treatment.DECIDE
                ? new Proposal(Treatment.DECIDE, name + "; " + own.why(), built.material())
                : new Proposal(Treatment.REFIT, name + ", onto the new pad", own.material());
    }
}
