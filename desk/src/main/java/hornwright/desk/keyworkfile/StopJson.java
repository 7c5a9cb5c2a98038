package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Limits;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.StopKind;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A stop in JSON; whether it ends opening or pressing is said by the field it stands in. */
final class StopJson {
    private StopJson() {}

    static Stop read(Fields f, Limits limits, Layers layers) {
        return new Stop(
                Names.id(f, "foot.a"),
                f.choice("kind", Words.of(StopKind.class)),
                limits,
                f.number("arm_mm", Bound.POSITIVE, "14"),
                f.number("clearance_mm", Bound.NOT_NEGATIVE, "4.6"),
                f.number("stiffness_N_per_mm", Bound.POSITIVE, "225"),
                Names.position(f),
                layers.read(f));
    }

    static Out write(Stop stop) {
        Out out = Out.object()
                .put("id", stop.id())
                .put("kind", stop.kind().word())
                .put("arm_mm", stop.armMm())
                .put("clearance_mm", stop.clearanceMm())
                .put("stiffness_N_per_mm", stop.stiffnessNPerMm());
        return Names.put(out, stop.at()).put("layers", Layers.write(stop.layers()));
    }
}
