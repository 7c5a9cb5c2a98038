package hornwright.desk.keyworkfile;

import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Spring;
import hornwright.bench.horn.SpringSection;
import hornwright.bench.horn.Word;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import hornwright.desk.json.Out;

/** A spring in JSON. */
final class SpringJson {
    private enum Kind implements Word {
        NEEDLE("needle"),
        FLAT("flat");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    private SpringJson() {}

    static Spring read(Fields f) {
        return new Spring(
                f.text("place", "spring.a"),
                f.text("material", "blued steel"),
                section(f),
                f.number("length_mm", Bound.POSITIVE, "45"),
                f.number("cradleArm_mm", Bound.POSITIVE, "5"),
                f.number("modulus_GPa", Bound.POSITIVE, "200"),
                f.number("torque_Nmm", Bound.POSITIVE, "12"),
                f.number("rate_Nmm_per_rad", Bound.NOT_NEGATIVE, "20"),
                f.choice("towards", Words.of(Rest.class)));
    }

    private static SpringSection section(Fields f) {
        if (f.choice("kind", Words.of(Kind.class)) == Kind.NEEDLE) {
            return new SpringSection.Needle(f.number("diameter_mm", Bound.POSITIVE, "1.02"));
        }
        return new SpringSection.Flat(
                f.number("width_mm", Bound.POSITIVE, "4"), f.number("thickness_mm", Bound.POSITIVE, "0.4"));
    }

    static Out write(Spring spring) {
        Out out = Out.object().put("place", spring.place()).put("material", spring.material());
        switch (spring.section()) {
            case SpringSection.Needle needle ->
                out.put("kind", Kind.NEEDLE.word()).put("diameter_mm", needle.diameterMm());
            case SpringSection.Flat flat ->
                out.put("kind", Kind.FLAT.word())
                        .put("width_mm", flat.widthMm())
                        .put("thickness_mm", flat.thicknessMm());
        }
        return out.put("length_mm", spring.lengthMm())
                .put("cradleArm_mm", spring.cradleArmMm())
                .put("modulus_GPa", spring.modulusGPa())
                .put("torque_Nmm", spring.torqueNmm())
                .put("rate_Nmm_per_rad", spring.rateNmmPerRad())
                .put("towards", spring.towards().word());
    }
}
