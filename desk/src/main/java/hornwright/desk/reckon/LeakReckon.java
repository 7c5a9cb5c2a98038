package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.leak.Leak;
import hornwright.engines.leak.LeakInput;
import hornwright.engines.leak.LeakResult;
import hornwright.engines.leak.Opening;
import hornwright.engines.leak.Opening.Decay;
import hornwright.engines.leak.Opening.Orifice;
import hornwright.engines.leak.Opening.Slot;
import hornwright.engines.leak.Opening.Slots;
import hornwright.engines.leak.RoomAir;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** {@code reckon leak}. */
final class LeakReckon implements Engine {
    private static final double ZERO_CELSIUS = 273.15;
    private static final double ROOM = 20;
    private static final double USUAL_LOSS = 1.5;
    private static final Slot STAND_IN = new Slot(1, 1, 1);

    @Override
    public String name() {
        return "leak";
    }

    @Override
    public String question() {
        return "flow through slots and holes, the equivalent hole";
    }

    @Override
    public Reckoning read(Fields in) {
        double loss = in.numberOr("loss", USUAL_LOSS, Bound.NOT_NEGATIVE, "1.5");
        Opening opening = opening(in, loss);
        double pressure = Unit.KPA.si(in.number("pressure_kPa", Bound.NOT_NEGATIVE, "1.0"));
        RoomAir given = in.objectIfAny("air", LeakReckon::air);
        RoomAir air = given == null ? RoomAir.at(ZERO_CELSIUS + ROOM) : given;
        return () -> Answer.of(out(Leak.reckon(new LeakInput(opening, pressure, loss, air))));
    }

    private static RoomAir air(Fields in) {
        double celsius = in.numberOr("temperature_degC", ROOM, Bound.ANY, "20");
        if (celsius <= -ZERO_CELSIUS) {
            in.fault("temperature_degC", celsius + " is below the coldest there is", "\"temperature_degC\": 20");
            return RoomAir.at(ZERO_CELSIUS + ROOM);
        }
        return RoomAir.at(ZERO_CELSIUS + celsius);
    }

    private static Opening opening(Fields in, double loss) {
        String chosen = in.oneOf("slot", "slots", "orifice", "decay");
        Slot slot = in.objectIfAny("slot", one -> slot(one, loss));
        List<Slot> slots = chosen.equals("slots")
                ? in.someOf("slots", one -> slot(one, loss))
                : in.list("slots", one -> slot(one, loss));
        Opening orifice = in.objectIfAny("orifice", LeakReckon::orifice);
        Opening decay = in.objectIfAny("decay", LeakReckon::decay);
        return switch (chosen) {
            case "slots" -> new Slots(slots);
            case "orifice" -> or(orifice);
            case "decay" -> or(decay);
            default -> new Slots(List.of(slot == null ? STAND_IN : slot));
        };
    }

    /** A chosen opening is never null once its field was seen; the stand-in only keeps the reading going. */
    private static Opening or(@Nullable Opening read) {
        return read == null ? new Orifice(1, 1) : read;
    }

    private static Slot slot(Fields in, double loss) {
        double arc = in.number("arc_mm", Bound.NOT_NEGATIVE, "60");
        double gap = in.number("gap_um", Bound.NOT_NEGATIVE, "50");
        double width = in.number("seat_width_mm", Bound.NOT_NEGATIVE, "1.5");
        if (width == 0 && loss == 0) {
            in.fault("seat_width_mm", "a seat without width and no loss hold no air back", "\"seat_width_mm\": 1.5");
        }
        return new Slot(Unit.MM.si(arc), Unit.UM.si(gap), Unit.MM.si(width));
    }

    private static Opening orifice(Fields in) {
        double diameter = Unit.MM.si(in.number("diameter_mm", Bound.POSITIVE, "1.0"));
        return new Orifice(diameter, in.numberOr("discharge", Leak.SHARP_EDGE, Bound.POSITIVE, "0.61"));
    }

    private static Opening decay(Fields in) {
        double volume = Unit.ML.si(in.number("volume_mL", Bound.POSITIVE, "1500"));
        double from = in.number("from_kPa", Bound.POSITIVE, "2.0");
        double to = in.number("to_kPa", Bound.NOT_NEGATIVE, "0.5");
        double seconds = in.number("seconds", Bound.POSITIVE, "4");
        if (in.has("from_kPa") && in.has("to_kPa") && !(to < from)) {
            in.fault("to_kPa", "the pressure falls, so this must be below from_kPa", "\"to_kPa\": " + from / 4);
            return new Decay(volume, 2, 1, seconds);
        }
        return new Decay(volume, Unit.KPA.si(from), Unit.KPA.si(to < from ? to : 0), seconds);
    }

    private static Out out(LeakResult leak) {
        return Out.object()
                .put("flow_mL_per_s", Unit.ML.of(leak.flow()))
                .put("speed_m_per_s", leak.speed())
                .put("reynolds", leak.reynolds())
                .put("equivalent_hole_mm", Unit.MM.of(leak.equivalentHole()));
    }
}
