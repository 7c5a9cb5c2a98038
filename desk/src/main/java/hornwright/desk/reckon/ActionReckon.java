package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.action.Action;
import hornwright.engines.action.ActionInput;
import hornwright.engines.action.ActionResult;
import hornwright.engines.action.Bumper;
import hornwright.engines.action.KeyPart;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** {@code reckon action}. */
final class ActionReckon implements Engine {
    private static final double STAND_IN = 1e-6;

    private enum Shape {
        DISC,
        POINT,
        BAR,
        WHEEL
    }

    private record Spring(double torque, double rate) {}

    /** As given: force in N at millimetres to the power of the exponent. */
    private record Stop(double stiffness, double exponent, double restitution, double speed) {
        Bumper bumper() {
            return Bumper.givingBack(stiffness * Math.pow(1e3, exponent), exponent, restitution, speed);
        }
    }

    @Override
    public String name() {
        return "action";
    }

    @Override
    public String question() {
        return "a key let go: opening, impact, rebounds, settling";
    }

    @Override
    public Reckoning read(Fields in) {
        double inertia = inertia(in);
        Spring spring = in.object("spring", ActionReckon::spring);
        double travel = Unit.MM.si(in.number("travel_mm", Bound.POSITIVE, "5"));
        double cup = Unit.MM.si(in.number("cup_arm_mm", Bound.POSITIVE, "25"));
        double stop = Unit.MM.si(in.number("stop_arm_mm", Bound.POSITIVE, "12"));
        Double touch = in.numberIfAny("touch_arm_mm", Bound.POSITIVE, "30");
        Stop met = in.object("bumper", ActionReckon::stop);
        double friction = Unit.NMM.si(in.numberOr("friction_Nmm", 0, Bound.NOT_NEGATIVE, "0"));
        Double touchArm = touch == null ? null : Double.valueOf(Unit.MM.si(touch));
        return () -> answer(Action.reckon(new ActionInput(
                inertia, spring.torque(), spring.rate(), travel, cup, stop, touchArm, met.bumper(), friction)));
    }

    private static double inertia(Fields in) {
        boolean given = in.oneOf("inertia_g_mm2", "parts").equals("inertia_g_mm2");
        Double whole = in.numberIfAny("inertia_g_mm2", Bound.POSITIVE, "2000");
        List<KeyPart> parts = given ? in.list("parts", ActionReckon::part) : in.someOf("parts", ActionReckon::part);
        double sum = given ? Unit.G_MM2.si(whole == null ? 1 : whole) : KeyPart.inertia(parts);
        if (!given && !parts.isEmpty() && sum == 0) {
            in.fault("parts", "these parts have no inertia", "a mass away from the axis");
        }
        return sum > 0 ? sum : STAND_IN;
    }

    private static KeyPart part(Fields in) {
        Map<String, Shape> shapes = new LinkedHashMap<>();
        shapes.put("disc", Shape.DISC);
        shapes.put("point", Shape.POINT);
        shapes.put("bar", Shape.BAR);
        shapes.put("wheel", Shape.WHEEL);
        double mass = Unit.G.si(in.number("mass_g", Bound.NOT_NEGATIVE, "3"));
        Shape shape = in.choice("shape", shapes);
        boolean round = shape == Shape.DISC || shape == Shape.WHEEL;
        double radius = size(in, "radius_mm", round, "12");
        double thickness = size(in, "thickness_mm", false, "3");
        double length = size(in, "length_mm", shape == Shape.BAR, "20");
        double arm = Unit.MM.si(in.number("arm_mm", Bound.NOT_NEGATIVE, "25"));
        return switch (shape) {
            case DISC -> new KeyPart.Disc(mass, radius, thickness, arm);
            case POINT -> new KeyPart.Point(mass, arm);
            case BAR -> new KeyPart.Bar(mass, length, arm);
            case WHEEL -> new KeyPart.Wheel(mass, radius, arm);
        };
    }

    private static double size(Fields in, String name, boolean needed, String example) {
        double millimetres = needed
                ? in.number(name, Bound.NOT_NEGATIVE, example)
                : in.numberOr(name, 0, Bound.NOT_NEGATIVE, example);
        return Unit.MM.si(millimetres);
    }

    private static Spring spring(Fields in) {
        return new Spring(
                Unit.NMM.si(in.number("torque_Nmm", Bound.NOT_NEGATIVE, "12")),
                Unit.NMM.si(in.number("rate_Nmm_per_rad", Bound.NOT_NEGATIVE, "20")));
    }

    private static Stop stop(Fields in) {
        return new Stop(
                in.number("stiffness_N_per_mm_p", Bound.POSITIVE, "200"),
                in.number("exponent", Bound.POSITIVE, "1.5"),
                in.number("restitution", Bound.INSIDE_SHARE, "0.6"),
                in.number("reference_speed_m_per_s", Bound.POSITIVE, "0.3"));
    }

    private static Answer answer(ActionResult key) {
        Out out = Out.object()
                .put("inertia_g_mm2", Unit.G_MM2.of(key.inertia()))
                .put("opening_ms", milliseconds(key.opening()))
                .put("impact_speed_m_per_s", key.impactSpeed())
                .put(
                        "rebounds",
                        key.rebounds().stream()
                                .map(one -> Out.object()
                                        .put("height_mm", Unit.MM.of(one.height()))
                                        .put("at_ms", Unit.MS.of(one.at())))
                                .toList())
                .put("settled_ms", milliseconds(key.settled()))
                .put("touch_N", key.touchForce())
                .put("bounces", key.bounces());
        if (key.opening() == null) {
            return Answer.falling(
                    out, "the key never reaches its stop: its spring is too weak for travel and friction");
        }
        return key.settled() == null
                ? Answer.falling(
                        out,
                        "the key never comes to rest: its spring is spent before the stop and nothing rubs, or its figures are far from a key's")
                : Answer.of(out);
    }

    private static @Nullable Double milliseconds(@Nullable Double seconds) {
        return seconds == null ? null : Double.valueOf(Unit.MS.of(seconds));
    }
}
