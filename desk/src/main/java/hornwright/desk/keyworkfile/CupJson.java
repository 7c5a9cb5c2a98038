package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.PadAdhesive;
import hornwright.bench.horn.PadBuild;
import hornwright.bench.horn.PadCentre;
import hornwright.bench.horn.PadCentreKind;
import hornwright.bench.horn.Rest;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A cup and the pad stack it was made for, in JSON. */
final class CupJson {
    private static final String NONE = "none";

    private CupJson() {}

    static Cup read(Fields f) {
        return new Cup(
                Names.id(f, "cup.a"),
                f.text("hole", "a"),
                f.text("key", "a"),
                f.choice("rest", Words.of(Rest.class)),
                f.number("inside_mm", Bound.POSITIVE, "24.3"),
                f.number("depth_mm", Bound.POSITIVE, "2.9"),
                f.number("arm_mm", Bound.POSITIVE, "29.8"),
                f.numberOr("offset_mm", 0, Bound.ANY, "0"),
                f.number("mass_g", Bound.NOT_NEGATIVE, "4.2"),
                f.object("pad", CupJson::pad),
                f.object("centre", CupJson::centre),
                f.object("adhesive", CupJson::adhesive),
                f.number("seatDepth_mm", Bound.NOT_NEGATIVE, "0.2"),
                f.number("seat_MPa", Bound.POSITIVE, "0.2"),
                f.number("heightFront_mm", Bound.POSITIVE, "5.5"));
    }

    private static PadBuild pad(Fields f) {
        return new PadBuild(
                f.number("diameter_mm", Bound.POSITIVE, "24.5"),
                f.number("thickness_mm", Bound.POSITIVE, "4.1"),
                f.text("material", "kid leather over woven wool felt"),
                f.numberOr("mass_g", 0, Bound.NOT_NEGATIVE, "1.1"));
    }

    private static PadCentre centre(Fields f) {
        PadCentreKind kind = f.choice("kind", Words.of(PadCentreKind.class));
        return new PadCentre(
                kind,
                f.textOr("detail", kind.word(), "domed metal, one piece"),
                f.textOr("material", NONE, "brass"),
                f.numberOr("diameter_mm", 0, Bound.NOT_NEGATIVE, "13"),
                f.numberOr("thickness_mm", 0, Bound.NOT_NEGATIVE, "0.4"),
                f.numberOr("mass_g", 0, Bound.NOT_NEGATIVE, "0.4"));
    }

    private static PadAdhesive adhesive(Fields f) {
        return new PadAdhesive(f.text("material", "shellac"), f.number("thickness_mm", Bound.NOT_NEGATIVE, "0.5"));
    }

    static Out write(Cup cup) {
        return Out.object()
                .put("id", cup.id())
                .put("hole", cup.hole())
                .put("key", cup.key())
                .put("rest", cup.rest().word())
                .put("inside_mm", cup.insideDiameterMm())
                .put("depth_mm", cup.depthMm())
                .put("arm_mm", cup.armMm())
                .put("offset_mm", cup.offsetMm())
                .put("mass_g", cup.massG())
                .put("pad", write(cup.pad()))
                .put("centre", write(cup.centre()))
                .put(
                        "adhesive",
                        Out.object()
                                .put("material", cup.adhesive().material())
                                .put("thickness_mm", cup.adhesive().thicknessMm()))
                .put("seatDepth_mm", cup.seatDepthMm())
                .put("seat_MPa", cup.seatStiffnessMPa())
                .put("heightFront_mm", cup.heightFrontMm());
    }

    private static Out write(PadBuild pad) {
        return Out.object()
                .put("diameter_mm", pad.diameterMm())
                .put("thickness_mm", pad.thicknessMm())
                .put("material", pad.material())
                .put("mass_g", pad.massG());
    }

    private static Out write(PadCentre centre) {
        return Out.object()
                .put("kind", centre.kind().word())
                .put("detail", centre.detail())
                .put("material", centre.material())
                .put("diameter_mm", centre.diameterMm())
                .put("thickness_mm", centre.thicknessMm())
                .put("mass_g", centre.massG());
    }
}
