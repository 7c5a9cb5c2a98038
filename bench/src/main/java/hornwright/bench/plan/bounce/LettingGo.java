package hornwright.bench.plan.bounce;

import hornwright.bench.bounce.KeyBounce;
import hornwright.bench.bounce.KeyBounce.Figure;
import hornwright.bench.bounce.OpeningKey;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.material.Sheet;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.Rule;
import hornwright.bench.settling.KeySettling;
import hornwright.engines.action.Trace;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lets a key go in the engine and writes down what it did, with what it rests on. */
final class LettingGo {
    private static final List<Property> GIVE = List.of(Property.MODULUS, Property.EXPONENT, Property.RESTITUTION);

    private final Materials materials;
    private final Reasons reasons;

    LettingGo(Materials materials, Reasons reasons) {
        this.materials = materials;
        this.reasons = reasons;
    }

    /** Empty for a key that never reaches its stop or has nothing under its foot. */
    Optional<Bounced> of(OpeningKey key, String what, boolean period) {
        return KeyBounce.of(key, materials).map(bounce -> {
            List<Because.Input> inputs = inputs(key);
            String id = "bounce/" + key.key().id() + "/" + what;
            return new Bounced(
                    key.key().id(),
                    key.key().name().display(),
                    what,
                    period,
                    number(id + "/opening", "until the foot touches", "ms", bounce.opening(), inputs),
                    number(id + "/rebound", "first rebound at the cup centre", "mm", bounce.rebound(), inputs),
                    number(
                            id + "/settled",
                            "until the cup stays within 2 in 100 of its travel",
                            "ms",
                            bounce.settled(),
                            inputs),
                    bounce.verdict(),
                    Trace.of(key.asEngineWantsIt(materials)));
        });
    }

    private PlannedNumber number(String id, String says, String unit, Figure figure, List<Because.Input> inputs) {
        String rule =
                says + ": the action engine, the key let go shut; each figure below moved down and up by its doubt,"
                        + " the larger differences added by their squares";
        PlannedNumber number = reasons.derive(id, rule, unit, in -> figure.value(), inputs);
        return new PlannedNumber(number.value(), unit, figure.u(), number.because(), null, null, null);
    }

    private List<Because.Input> inputs(OpeningKey key) {
        List<Because.Input> inputs = new ArrayList<>();
        for (String material :
                key.cushion().sheets().stream().map(Sheet::material).distinct().toList()) {
            for (Property property : GIVE) {
                Rule rule = materials.rule(material, property);
                inputs.add(Because.Input.of(
                        material + ", " + property.label(), reasons.rule(materials.rules(), rule.id())));
            }
        }
        Rule area = KeySettling.area(key.key().stop(), materials.rules());
        inputs.add(Because.Input.of("area of the foot", reasons.rule(materials.rules(), area.id())));
        inputs.add(Because.Input.of("weight of the arm", reasons.rule(materials.rules(), "bounce.arm-share")));
        inputs.add(Because.Input.of("friction", reasons.rule(materials.rules(), "bounce.friction-share")));
        return inputs;
    }
}
