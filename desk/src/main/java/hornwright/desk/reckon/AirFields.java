package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirInput.Bell;
import hornwright.engines.air.AirInput.BorePoint;
import hornwright.engines.air.AirInput.Curve;
import hornwright.engines.air.AirInput.End;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirInput.Leak;
import hornwright.engines.air.AirInput.Mouthpiece;
import hornwright.engines.air.AirInput.Pad;
import hornwright.engines.air.AirModel;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The parts of an air column, each read from its own object. */
final class AirFields {
    private static final double COLDEST = -20;
    private static final double HOTTEST = 60;
    private static final double ROOM = 26.85;
    private static final int MOST_POINTS = 100_000;

    private AirFields() {}

    /** A hole with the id it goes by. */
    record NamedHole(String id, Hole hole) {}

    static Air air(Fields in) {
        Air found = in.objectIfAny("air", AirFields::airOf);
        return found == null ? AirModel.CHAIGNE_KERGOMARD.at(ROOM) : found;
    }

    private static Air airOf(Fields in) {
        double celsius = in.numberOr("temperature_degC", ROOM, Bound.ANY, "26.85");
        Map<String, AirModel> models = new LinkedHashMap<>();
        models.put("chaigne-kergomard", AirModel.CHAIGNE_KERGOMARD);
        models.put("keefe", AirModel.KEEFE);
        AirModel model = in.choiceOr("model", models, AirModel.CHAIGNE_KERGOMARD);
        if (celsius < COLDEST || celsius > HOTTEST) {
            in.fault("temperature_degC", celsius + " is outside what the formulas for air cover", "20");
            return model.at(ROOM);
        }
        return model.at(celsius);
    }

    static BorePoint borePoint(Fields in) {
        double at = Unit.MM.si(in.number("at_mm", Bound.NOT_NEGATIVE, "0"));
        double diameter = in.number("diameter_mm", Bound.POSITIVE, "11.2");
        return new BorePoint(at, Unit.MM.si(diameter) / 2);
    }

    static Mouthpiece mouthpiece(Fields in) {
        Mouthpiece found = in.objectIfAny("mouthpiece", AirFields::mouthpieceOf);
        return found == null ? new Mouthpiece.Cavity(0) : found;
    }

    private static Mouthpiece mouthpieceOf(Fields in) {
        if (in.oneOf("volume_mm3", "cylinder").equals("volume_mm3")) {
            if (in.has("reed_mm3")) {
                in.fault("reed_mm3", "does not go with volume_mm3, which has the reed in it", "leave it out");
            }
            return new Mouthpiece.Cavity(Unit.MM3.si(in.numberOr("volume_mm3", 0, Bound.NOT_NEGATIVE, "6568")));
        }
        double reed = Unit.MM3.si(in.numberOr("reed_mm3", 0, Bound.NOT_NEGATIVE, "2000"));
        return in.object(
                "cylinder",
                tube -> new Mouthpiece.Cylinder(
                        Unit.MM.si(tube.number("length_mm", Bound.POSITIVE, "60")),
                        Unit.MM.si(tube.number("diameter_mm", Bound.POSITIVE, "12")) / 2,
                        reed));
    }

    static Bell bell(Fields in) {
        Bell found = in.objectIfAny("bell", AirFields::bellOf);
        return found == null ? new Bell(End.UNFLANGED, 0) : found;
    }

    private static Bell bellOf(Fields in) {
        Map<String, End> ends = new LinkedHashMap<>();
        ends.put("unflanged", End.UNFLANGED);
        ends.put("flanged", End.FLANGED);
        ends.put("ideal", End.IDEAL);
        End end = in.choiceOr("end", ends, End.UNFLANGED);
        return new Bell(end, Unit.MM.si(in.numberOr("extra_mm", 0, Bound.NOT_NEGATIVE, "0")));
    }

    static NamedHole hole(Fields in) {
        String id = in.text("id", "h1");
        double at = Unit.MM.si(in.number("at_mm", Bound.NOT_NEGATIVE, "370"));
        double radius = Unit.MM.si(in.number("diameter_mm", Bound.POSITIVE, "12")) / 2;
        double chimney = Unit.MM.si(in.number("chimney_mm", Bound.NOT_NEGATIVE, "3"));
        double wall = Unit.MM.si(in.number("rimWall_mm", Bound.NOT_NEGATIVE, "0.8"));
        Pad pad = in.objectIfAny("pad", padIn -> pad(padIn, radius, chimney));
        return new NamedHole(id, new Hole(at, radius, chimney, wall, pad));
    }

    private static Pad pad(Fields in, double holeRadius, double chimney) {
        double radius = Unit.MM.si(in.number("diameter_mm", Bound.POSITIVE, "17")) / 2;
        double height = Unit.MM.si(in.number("height_mm", Bound.NOT_NEGATIVE, "3.0"));
        double protrusion = Unit.MM.si(in.numberOr("protrusion_mm", 0, Bound.NOT_NEGATIVE, "0.2"));
        if (in.has("diameter_mm") && radius < holeRadius) {
            in.fault("diameter_mm", "a pad narrower than its hole cannot close it", "more than the hole's diameter_mm");
        }
        if (protrusion > chimney) {
            in.fault("protrusion_mm", "stands deeper than the chimney is high", "at most the hole's chimney_mm");
        }
        return new Pad(radius, height, Math.min(protrusion, chimney));
    }

    static Leak leak(Fields in) {
        double at = Unit.MM.si(in.number("at_mm", Bound.NOT_NEGATIVE, "370"));
        double radius = Unit.MM.si(in.number("diameter_mm", Bound.POSITIVE, "0.5")) / 2;
        return new Leak(at, radius, Unit.MM.si(in.number("depth_mm", Bound.NOT_NEGATIVE, "1.0")));
    }

    static @Nullable Curve curve(Fields in, boolean wanted) {
        Curve found = in.objectIfAny("curve", AirFields::curveOf);
        if (!wanted) {
            return null;
        }
        return found == null ? new Curve(50, 2000, 2000) : found;
    }

    private static Curve curveOf(Fields in) {
        double from = in.numberOr("from_Hz", 50, Bound.POSITIVE, "50");
        double to = in.numberOr("to_Hz", 2000, Bound.POSITIVE, "2000");
        int points = in.wholeOr("points", 2000, Bound.COUNT, "2000");
        if (to < from) {
            in.fault("to_Hz", "lies below from_Hz", "\"to_Hz\": 2000");
        }
        if (points > MOST_POINTS) {
            in.fault("points", points + " points are more than anybody can look at", "\"points\": 2000");
            return new Curve(from, to, 2);
        }
        return new Curve(from, to, points);
    }
}
