package hornwright.bench.plan.settled;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Treatment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Everything the packing down of a horn depends on.
 *
 * @param feet of the cups whose height the plan sets, in the order of the keywork
 * @param pieces what lies in the contacts, by place; a place not in it is as the pattern has it, and old
 * @param planned what the numbers of the plan rest on
 */
public record SettledQuestion(
        Keywork keywork, List<Foot> feet, Map<String, Piece> pieces, ShopRules rules, Becauses planned) {
    public SettledQuestion {
        feet = List.copyOf(feet);
        pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    }

    /**
     * A cup and what its stop loses.
     *
     * @param pad place that carries its heights
     * @param settled height once the stop has packed
     * @param loses of the stop, all its layers together
     * @param ratio rise at the front edge for each mm
     */
    public record Foot(
            String cup,
            String pad,
            PlannedNumber set,
            PlannedNumber settled,
            PlannedNumber loses,
            PlannedNumber ratio) {}

    /**
     * One layer in a contact.
     *
     * @param thickness null when only the pattern tells
     * @param fresh whether a new piece goes in, or may
     */
    public record Piece(@Nullable String material, @Nullable PlannedNumber thickness, boolean fresh) {}

    public static SettledQuestion of(PlanInputs inputs, Plan plan) {
        Keywork keywork = inputs.keywork();
        List<Foot> feet = new ArrayList<>();
        keywork.cups().forEach(cup -> foot(keywork, plan, cup).ifPresent(feet::add));
        Map<String, Piece> pieces = new LinkedHashMap<>();
        keywork.links()
                .forEach(link -> link.layers()
                        .forEach(layer -> plan.places()
                                .find(layer.place())
                                .ifPresent(place -> pieces.put(layer.place(), piece(place)))));
        return new SettledQuestion(keywork, feet, pieces, inputs.rules(), plan.becauses());
    }

    private static Optional<Foot> foot(Keywork keywork, Plan plan, Cup cup) {
        List<Place> ofKey = keywork.placesOf(new Owner.OfKey(cup.key()));
        List<String> pads = keywork.placesOf(cup).stream()
                .filter(place -> place.kind() == PlaceKind.PAD)
                .map(Place::id)
                .toList();
        List<String> all =
                Stream.concat(pads.stream(), ofKey.stream().map(Place::id)).toList();
        PlannedNumber set = number(plan, all, NumberName.HEIGHT_TARGET);
        PlannedNumber settled = number(plan, all, NumberName.HEIGHT_SETTLED);
        PlannedNumber loses = number(plan, all, NumberName.SETTLES);
        PlannedNumber ratio = number(plan, all, NumberName.RATIO);
        return set == null || settled == null || loses == null || ratio == null
                ? Optional.empty()
                : Optional.of(new Foot(cup.id(), all.getFirst(), set, settled, loses, ratio));
    }

    private static @Nullable PlannedNumber number(Plan plan, List<String> places, NumberName name) {
        return places.stream()
                .flatMap(place -> plan.number(place, name).stream())
                .findFirst()
                .orElse(null);
    }

    private static Piece piece(PlannedPlace place) {
        PlannedNumber thickness = place.number(NumberName.THICKNESS)
                .filter(number -> number.value() > 0)
                .orElse(null);
        return new Piece(place.material(), thickness, place.isRenewed() || place.treatment() == Treatment.DECIDE);
    }
}
