package hornwright.desk.reckon;

import hornwright.desk.json.BadInput;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.spring.Section;
import hornwright.engines.spring.Section.Flat;
import hornwright.engines.spring.Section.Round;
import hornwright.engines.spring.Spring;
import hornwright.engines.spring.SpringInput;
import hornwright.engines.spring.SpringInput.Bend;
import hornwright.engines.spring.SpringInput.Model;
import hornwright.engines.spring.SpringResult;
import java.util.LinkedHashMap;
import java.util.Map;

/** {@code reckon spring}. */
final class SpringReckon implements Engine {
    private static final Map<String, Boolean> KINDS = inOrder("needle", true, "flat", false);
    private static final Map<String, Model> MODELS = inOrder("large", Model.LARGE, "linear", Model.LINEAR);

    private static <V> Map<String, V> inOrder(String one, V first, String other, V second) {
        Map<String, V> words = new LinkedHashMap<>();
        words.put(one, first);
        words.put(other, second);
        return words;
    }

    @Override
    public String name() {
        return "spring";
    }

    @Override
    public String question() {
        return "force, stress and torque of a needle or flat spring";
    }

    @Override
    public Reckoning read(Fields in) {
        Section section = section(in);
        double modulus = Unit.GPA.si(in.number("modulus_GPa", Bound.POSITIVE, "200"));
        double length = Unit.MM.si(in.number("length_mm", Bound.POSITIVE, "40"));
        Bend bend = bend(in, length);
        Model model = in.choiceOr("model", MODELS, Model.LARGE);
        double cradle = Unit.MM.si(in.number("cradle_arm_mm", Bound.POSITIVE, "8"));
        double pad = Unit.MM.si(in.number("pad_arm_mm", Bound.POSITIVE, "30"));
        Double strength = in.numberIfAny("strength_MPa", Bound.POSITIVE, "2000");
        Double pascals = strength == null ? null : Double.valueOf(Unit.MPA.si(strength));
        return () ->
                compute(in.pointer(), new SpringInput(section, modulus, length, bend, model, cradle, pad, pascals));
    }

    private static Section section(Fields in) {
        boolean needle = in.choice("kind", KINDS);
        Double diameter = in.numberIfAny("diameter_mm", Bound.POSITIVE, "1.0");
        Double width = in.numberIfAny("width_mm", Bound.POSITIVE, "4");
        Double thickness = in.numberIfAny("thickness_mm", Bound.POSITIVE, "0.3");
        if (!in.has("kind")) {
            return new Round(1);
        }
        if (needle) {
            mustHave(in, "diameter_mm", "1.0");
            mustNotHave(in, "width_mm", "a needle is round", "\"diameter_mm\": 1.0");
            mustNotHave(in, "thickness_mm", "a needle is round", "\"diameter_mm\": 1.0");
            return new Round(diameter == null ? 1 : Unit.MM.si(diameter));
        }
        mustHave(in, "width_mm", "4");
        mustHave(in, "thickness_mm", "0.3");
        mustNotHave(
                in, "diameter_mm", "a flat spring has width and thickness", "\"width_mm\": 4, \"thickness_mm\": 0.3");
        return width == null || thickness == null ? new Round(1) : new Flat(Unit.MM.si(width), Unit.MM.si(thickness));
    }

    private static void mustHave(Fields in, String name, String example) {
        if (!in.has(name)) {
            in.fault(name, "missing", "\"" + name + "\": " + example);
        }
    }

    private static void mustNotHave(Fields in, String name, String why, String example) {
        if (in.has(name)) {
            in.fault(name, why, example);
        }
    }

    private static Bend bend(Fields in, double length) {
        String chosen = in.oneOf("deflection_mm", "force_N");
        Double deflection = in.numberIfAny("deflection_mm", Bound.NOT_NEGATIVE, "5");
        Double force = in.numberIfAny("force_N", Bound.NOT_NEGATIVE, "2.3");
        if (deflection != null && Unit.MM.si(deflection) >= length) {
            in.fault("deflection_mm", deflection + " is the whole spring or more", "less than length_mm");
            return new Bend.To(0);
        }
        if (chosen.equals("force_N") && force != null) {
            return new Bend.Under(force);
        }
        return new Bend.To(deflection == null ? 0 : Unit.MM.si(deflection));
    }

    private static Answer compute(String pointer, SpringInput input) {
        SpringResult spring = Spring.reckon(input);
        if (!(spring.deflection() < input.length())) {
            String what = input.bend() instanceof Bend.Under(double force)
                    ? force + " N would bend the spring by its whole length in proportional theory"
                    : "the deflection is the whole spring or more";
            throw new BadInput(pointer + "/force_N", what, "less, or \"model\": \"large\"");
        }
        return Answer.of(out(spring));
    }

    private static Out out(SpringResult spring) {
        return Out.object()
                .put("rate_N_per_mm", Unit.N_PER_MM.of(spring.rate()))
                .put("force_N", spring.force())
                .put("deflection_mm", Unit.MM.of(spring.deflection()))
                .put("stress_MPa", Unit.MPA.of(spring.stress()))
                .put("stress_share", spring.stressShare())
                .put("torque_Nmm", Unit.NMM.of(spring.torque()))
                .put("force_at_pad_N", spring.forceAtPad())
                .put("linear_error_share", spring.linearErrorShare());
    }
}
