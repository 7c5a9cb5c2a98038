package hornwright.bench.plan.bounce;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.material.Sheet;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.rules.ShopRules;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything the bounce of a horn's keys depends on.
 *
 * @param planned what the plan lays at the places of the stops; a place not in it is as built
 */
public record BounceQuestion(Keywork keywork, Map<String, Sheet> planned, ShopRules rules) {
    public BounceQuestion {
        planned = Collections.unmodifiableMap(new LinkedHashMap<>(planned));
    }

    public static BounceQuestion of(PlanInputs inputs, Plan plan) {
        Map<String, Sheet> planned = new LinkedHashMap<>();
        inputs.keywork()
                .keys()
                .forEach(key -> key.stop()
                        .layers()
                        .forEach(layer -> plan.places()
                                .find(layer.place())
                                .ifPresent(place -> planned.put(
                                        layer.place(), sheet(place, layer.material(), layer.thicknessMm())))));
        return new BounceQuestion(inputs.keywork(), planned, inputs.rules());
    }

    /** What a key comes to rest on, from the foot outwards. */
    public List<Sheet> sheets(Key key) {
        return key.stop().layers().stream()
                .map(layer -> planned.getOrDefault(layer.place(), new Sheet(layer.material(), layer.thicknessMm())))
                .toList();
    }

    private static Sheet sheet(PlannedPlace place, String material, double thicknessMm) {
        double thickness = place.number(NumberName.THICKNESS)
                .map(number -> number.value())
                .filter(value -> value > 0)
                .orElse(thicknessMm);
        String other = place.material();
        return new Sheet(other == null ? material : other, thickness);
    }
}
