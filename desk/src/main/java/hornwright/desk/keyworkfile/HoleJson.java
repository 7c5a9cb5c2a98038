package hornwright.desk.keyworkfile;

import hornwright.bench.horn.RimKind;
import hornwright.bench.horn.ToneHole;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A tone hole in JSON. */
final class HoleJson {
    private HoleJson() {}

    static ToneHole read(Fields f) {
        return new ToneHole(
                Names.id(f, "low-b"),
                Names.name(f, "low B"),
                Names.position(f),
                f.number("diameter_mm", Bound.POSITIVE, "42.4"),
                f.number("chimney_mm", Bound.NOT_NEGATIVE, "2.7"),
                f.number("rimWall_mm", Bound.POSITIVE, "0.9"),
                f.choice("rim", Words.of(RimKind.class)),
                f.flagOr("octaveVent", false));
    }

    static Out write(ToneHole hole) {
        Out out = Out.object().put("id", hole.id());
        Names.put(Names.put(out, hole.name()), hole.at())
                .put("diameter_mm", hole.diameterMm())
                .put("chimney_mm", hole.chimneyMm())
                .put("rimWall_mm", hole.rimWallMm())
                .put("rim", hole.rim().word());
        return hole.octaveVent() ? out.put("octaveVent", true) : out;
    }
}
