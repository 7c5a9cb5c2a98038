package hornwright.desk.keyworkfile;

import hornwright.bench.horn.BorePoint;
import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.Tube;
import hornwright.bench.horn.TubePart;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** The tube in JSON. */
final class TubeJson {
    private TubeJson() {}

    static Tube read(Fields f) {
        return new Tube(
                f.number("wall_mm", Bound.POSITIVE, "0.6"),
                f.number("mouthpiece_mm3", Bound.POSITIVE, "8700"),
                f.someOf("bore", TubeJson::borePoint),
                f.someOf("parts", TubeJson::part));
    }

    private static BorePoint borePoint(Fields f) {
        return new BorePoint(
                f.number("at_mm", Bound.NOT_NEGATIVE, "182.0"), f.number("diameter_mm", Bound.POSITIVE, "23.6"));
    }

    private static TubePart part(Fields f) {
        return new TubePart(
                f.choice("part", Words.of(HornPart.class)),
                f.number("from_mm", Bound.NOT_NEGATIVE, "0"),
                f.number("to_mm", Bound.POSITIVE, "182.0"));
    }

    static Out write(Tube tube) {
        return Out.object()
                .put("wall_mm", tube.wallMm())
                .put("mouthpiece_mm3", tube.mouthpieceVolumeMm3())
                .put(
                        "bore",
                        tube.bore().stream()
                                .map(p -> Out.object().put("at_mm", p.atMm()).put("diameter_mm", p.diameterMm()))
                                .toList())
                .put(
                        "parts",
                        tube.parts().stream()
                                .map(p -> Out.object()
                                        .put("part", p.part().word())
                                        .put("from_mm", p.fromMm())
                                        .put("to_mm", p.toMm()))
                                .toList());
    }
}
