package hornwright.desk.reckon;

import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;
import hornwright.engines.seat.PadStiffness;
import hornwright.engines.seat.Profile;
import hornwright.engines.seat.Seat;
import hornwright.engines.seat.SeatInput;
import hornwright.engines.seat.SeatInput.Mount;
import hornwright.engines.seat.SeatResult;
import hornwright.engines.seat.SeatResult.Position;
import org.jspecify.annotations.Nullable;

/** {@code reckon seat}. */
final class SeatReckon implements Engine {
    private record Rim(double radius, Profile profile) {}

    private record Pad(PadStiffness stiffness, Profile face) {}

    @Override
    public String name() {
        return "seat";
    }

    @Override
    public String question() {
        return "where a pad touches its rim, what gap is left, what closes it";
    }

    @Override
    public Reckoning read(Fields in) {
        Rim rim = in.object("rim", SeatReckon::rim);
        Pad pad = in.object("pad", SeatReckon::pad);
        Mount mount = mount(in, rim.radius());
        double width = Unit.MM.si(in.number("seat_width_mm", Bound.NOT_NEGATIVE, "1.2"));
        double pressure = Unit.KPA.si(in.number("pressure_kPa", Bound.NOT_NEGATIVE, "1.0"));
        return () -> Answer.of(out(Seat.reckon(
                new SeatInput(rim.radius(), rim.profile(), pad.face(), pad.stiffness(), mount, width, pressure))));
    }

    private static Rim rim(Fields in) {
        double radius = Unit.MM.si(in.number("radius_mm", Bound.POSITIVE, "9"));
        if (!in.has("profile_um")) {
            in.fault("profile_um", "missing", "\"profile_um\": [], for a level rim");
        }
        return new Rim(radius, ProfileJson.read(in));
    }

    private static Pad pad(Fields in) {
        double skin = Unit.MPA.si(in.number("stiffness_MPa", Bound.POSITIVE, "0.2"));
        Double felt = in.numberIfAny("felt_stiffness_MPa", Bound.POSITIVE, "0.6");
        Double from = in.numberIfAny("felt_from_um", Bound.NOT_NEGATIVE, "100");
        if ((felt == null) != (from == null)) {
            String lacking = felt == null ? "felt_stiffness_MPa" : "felt_from_um";
            in.fault(lacking, "missing: the second line needs a stiffness and where it starts", "both or neither");
        }
        PadStiffness stiffness = felt == null || from == null
                ? PadStiffness.even(skin)
                : new PadStiffness(skin, Unit.UM.si(from), Unit.MPA.si(felt));
        return new Pad(stiffness, ProfileJson.read(in));
    }

    private static Mount mount(Fields in, double radius) {
        double error = Unit.UM.si(in.numberOr("height_error_um", 0, Bound.ANY, "0"));
        double front = Unit.MRAD.si(in.numberOr("tilt_front_mrad", 0, Bound.ANY, "0"));
        double side = Unit.MRAD.si(in.numberOr("tilt_side_mrad", 0, Bound.ANY, "0"));
        Double arm = in.numberIfAny("arm_mm", Bound.POSITIVE, "30");
        Double torque = in.numberIfAny("torque_Nmm", Bound.NOT_NEGATIVE, "10");
        Double force = in.numberIfAny("force_N", Bound.NOT_NEGATIVE, "0.5");
        if (arm == null) {
            refuseErrors(in);
            return new Mount.Free(load(in, force, "force_N", "0.5", torque, "torque_Nmm"));
        }
        double load = Unit.NMM.si(load(in, torque, "torque_Nmm", "10", force, "force_N"));
        double metres = Unit.MM.si(arm);
        if (!(metres > radius)) {
            in.fault("arm_mm", arm + " puts the hinge inside the rim", "more than radius_mm");
            metres = 2 * radius;
        }
        return new Mount.Hinged(metres, error, front, side, load);
    }

    private static double load(
            Fields in, @Nullable Double wanted, String name, String example, @Nullable Double other, String otherName) {
        String carried = name.equals("force_N") ? "without arm_mm" : "with arm_mm";
        if (other != null) {
            in.fault(otherName, "does not go " + carried, "\"" + name + "\": " + example);
        }
        if (wanted == null) {
            in.fault(name, "missing " + carried, "\"" + name + "\": " + example);
            return 1;
        }
        return wanted;
    }

    private static void refuseErrors(Fields in) {
        for (String name : new String[] {"height_error_um", "tilt_front_mrad", "tilt_side_mrad"}) {
            if (in.has(name) && in.numberOr(name, 0, Bound.ANY, "0") != 0) {
                in.fault(name, "must be 0 without arm_mm: a loose disc finds its own height and tilt", "0");
            }
        }
    }

    private static Out out(SeatResult seat) {
        Out out = Out.object().put("force_N", seat.force());
        switch (seat.position()) {
            case Position.Turned turned -> out.put("rotation_mrad", Unit.MRAD.of(turned.rotation()));
            case Position.Sunk sunk ->
                out.putNull("rotation_mrad")
                        .put("descent_um", Unit.UM.of(sunk.descent()))
                        .put("tilt_front_mrad", Unit.MRAD.of(sunk.tiltFront()))
                        .put("tilt_side_mrad", Unit.MRAD.of(sunk.tiltSide()));
        }
        out.put("contact_fraction", seat.contactFraction())
                .put("largest_gap_um", Unit.UM.of(seat.largestGap()))
                .put("largest_gap_at_deg", Unit.DEG.of(seat.largestGapAngle()))
                .put("gap_cubed_um3", Unit.UM3.of(seat.gapCubed()))
                .put("open_area_mm2", Unit.MM2.of(seat.openArea()));
        switch (seat.position()) {
            case Position.Turned turned -> out.put("sealing_torque_Nmm", Unit.NMM.of(seat.sealing()));
            case Position.Sunk sunk -> out.putNull("sealing_torque_Nmm").put("sealing_force_N", seat.sealing());
        }
        return out.put("leak_mL_per_s", Unit.ML.of(seat.leak())).put("first_touch_deg", Unit.DEG.of(seat.firstTouch()));
    }
}
