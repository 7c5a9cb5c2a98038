package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Axis;
import hornwright.bench.horn.Direction;
import hornwright.bench.horn.HingeTube;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Limits;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TouchKind;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A key in JSON. */
final class KeyJson {
    private KeyJson() {}

    static Key read(Fields f, Layers layers) {
        return new Key(
                Names.id(f, "palm-d"),
                Names.name(f, "palm D"),
                f.choice("group", Words.of(KeyGroup.class)),
                f.choice("rest", Words.of(Rest.class)),
                f.text("rod", "rod.palm-d"),
                f.object("axis", KeyJson::axis),
                f.object("stop", stop -> StopJson.read(stop, Limits.OPENING, layers)),
                f.objectIfAny("closingStop", stop -> StopJson.read(stop, Limits.CLOSING, layers)),
                f.objectIfAny("touch", KeyJson::touch),
                f.object("spring", SpringJson::read),
                f.number("restRotation_rad", Bound.ANY, "0.16"),
                f.number("pressedRotation_rad", Bound.ANY, "0"),
                f.object("tube", KeyJson::tube));
    }

    private static Axis axis(Fields f) {
        return new Axis(
                f.number("at_mm", Bound.NOT_NEGATIVE, "290.4"),
                f.number("angle_deg", Bound.ANY, "-162"),
                f.number("heightAboveBody_mm", Bound.NOT_NEGATIVE, "7"),
                f.choiceOr("direction", Words.of(Direction.class), Direction.ALONG));
    }

    private static Touch touch(Fields f) {
        return new Touch(
                f.choice("kind", Words.of(TouchKind.class)),
                Names.position(f),
                f.number("arm_mm", Bound.POSITIVE, "33"),
                f.flagOr("closes", true),
                f.number("force_N", Bound.POSITIVE, "0.8"));
    }

    private static HingeTube tube(Fields f) {
        return new HingeTube(
                f.number("length_mm", Bound.POSITIVE, "30.7"),
                f.number("outer_mm", Bound.POSITIVE, "4.1"),
                f.number("inner_mm", Bound.POSITIVE, "2.53"),
                f.numberOr("flexLength_mm", 0, Bound.NOT_NEGATIVE, "24"));
    }

    static Out write(Key key) {
        Out out = Names.put(Out.object().put("id", key.id()), key.name())
                .put("group", key.group().word())
                .put("rest", key.rest().word())
                .put("rod", key.rod())
                .put("axis", write(key.axis()))
                .put("stop", StopJson.write(key.stop()));
        if (key.closingStop() != null) {
            out.put("closingStop", StopJson.write(key.closingStop()));
        }
        if (key.touch() != null) {
            out.put("touch", write(key.touch()));
        }
        return out.put("spring", SpringJson.write(key.spring()))
                .put("restRotation_rad", key.restRotationRad())
                .put("pressedRotation_rad", key.pressedRotationRad())
                .put("tube", write(key.tube()));
    }

    private static Out write(Axis axis) {
        return Out.object()
                .put("at_mm", axis.atMm())
                .put("angle_deg", axis.angleDeg())
                .put("heightAboveBody_mm", axis.heightAboveBodyMm())
                .put("direction", axis.direction().word());
    }

    private static Out write(Touch touch) {
        return Names.put(Out.object().put("kind", touch.kind().word()), touch.at())
                .put("arm_mm", touch.armMm())
                .put("closes", touch.closes())
                .put("force_N", touch.forceN());
    }

    private static Out write(HingeTube tube) {
        return Out.object()
                .put("length_mm", tube.lengthMm())
                .put("outer_mm", tube.outerMm())
                .put("inner_mm", tube.innerMm())
                .put("flexLength_mm", tube.flexLengthMm());
    }
}
